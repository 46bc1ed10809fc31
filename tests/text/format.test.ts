import { afterEach, describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../src/base/ticks.ts';
import {
  barometer,
  capital,
  clock,
  dialDigits,
  distance,
  fixed,
  gaugeByEye,
  inHgAndKPa,
  kPaToInHg,
  money,
  needleAtRest,
  needleByEye,
  shownDistance,
  shownVacuum,
  smokePressure,
  temperature,
  vacuum,
  vacuumAim,
  volume,
  waterColumn,
} from '../../src/text/format.ts';
import { setDisplayUnits } from '../../src/text/units.ts';

describe('numbers as the trade reads them', () => {
  // NIST SP 811 (2008), appendix B.8: 1 conventional inch of mercury is 3.386 389 kPa.
  it('shows kilopascals beside inches of mercury', () => {
    expect(kPaToInHg(3.386389)).toBeCloseTo(1, 9);
    expect(inHgAndKPa(50.795835)).toBe('15.0 inHg (50.8 kPa)');
  });

  it('reads a needle to half an inch, as an eye does', () => {
    expect(needleByEye(50.0)).toBe('15');
    expect(needleByEye(15.2)).toBe('4.5');
    expect(needleByEye(-0.1)).toBe('0');
  });

  it('never shows minus zero', () => expect(fixed(-0.0004, 2)).toBe('0.00'));

  it('counts the clock in whole seconds', () => {
    expect(clock(secondsToTicks(760.999))).toBe('00:12:40');
    expect(clock(secondsToTicks(3661))).toBe('01:01:01');
  });

  it('writes money and capitals', () => {
    expect(money(385)).toBe('$385');
    expect(capital('red lead')).toBe('Red lead');
  });
});

describe('a quantity in the units of the page', () => {
  afterEach(() => setDisplayUnits('us'));
  const both = (shown: () => string): readonly string[] =>
    (['us', 'metric'] as const).map((system) => {
      setDisplayUnits(system);
      return shown();
    });

  // NIST SP 811 (2008), appendix B.8, and its derived pairs: 18.0 inHg is 60.955 kPa, 14 inH2O is 3.4872 kPa.
  it('is vacuum by the published factor', () => {
    expect(both(() => vacuum(60.955))).toEqual(['18.0 inHg', '61.0 kPa']);
    expect(both(() => shownVacuum(3.386389).toFixed(6))).toEqual(['1.000000', '3.386389']);
    expect(both(() => smokePressure(3.4872))).toEqual(['14.0 inH2O', '3.5 kPa']);
    expect(both(() => vacuumAim(50.795835))).toEqual(['15.0 inHg', '51 kPa']);
  });

  // The standard atmosphere, 101.325 kPa, is 29.9213 inHg (NIST SP 811).
  it('is the air outside', () => expect(both(() => barometer(101.325))).toEqual(['29.9 inHg', '101.3 kPa']));

  it('is read off a dial to half of its divisions, and no finer', () => {
    expect(both(() => gaugeByEye(50.4))).toEqual(['15 inHg', '50 kPa']);
    expect(both(() => gaugeByEye(15.7))).toEqual(['4.5 inHg', '16 kPa']);
    expect(both(() => dialDigits(50.4))).toEqual(['14.9', '50']);
  });

  it('is at rest in both or in neither', () => {
    for (const kPa of [0, 0.6, 0.84, 0.86, 1.2]) {
      const rest = needleAtRest(kPa);
      expect(both(() => String(needleByEye(kPa) === '0'))).toEqual([String(rest), String(rest)]);
    }
  });

  it('is read off the water in tenths of an inch or in fifths of a hectopascal', () => {
    expect(both(() => waterColumn(2.54))).toEqual(['10.2 inH2O', '25.4 hPa']);
    setDisplayUnits('metric');
    const read = [2.495, 2.504, 2.512, 2.525, 2.535].map(waterColumn);
    expect(read).toEqual(['25.0 hPa', '25.0 hPa', '25.2 hPa', '25.2 hPa', '25.4 hPa']);
  });

  // 1 mile is 1.609 344 km exactly; 20 °C is 68 °F, and the two scales meet at 40 below.
  it('is a way or a temperature', () => {
    expect(both(() => volume(40))).toEqual(['10.6 gal', '40 L']);
    expect(both(() => distance(1))).toEqual(['1 mile', '2 km']);
    expect(both(() => distance(247.4))).toEqual(['247 miles', '398 km']);
    expect(both(() => String(shownDistance(100)))).toEqual(['100', '161']);
    expect(both(() => temperature(20))).toEqual(['68 °F', '20 °C']);
    expect(both(() => temperature(-40))).toEqual(['-40 °F', '-40 °C']);
  });
});
