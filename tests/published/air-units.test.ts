import { expect, test } from 'vitest';
import {
  inH2OToPa,
  inHgToPa,
  PA_PER_INH2O,
  PA_PER_INHG,
  PA_PER_PSI,
  paToInH2O,
  paToInHg,
} from '../../src/base/units.ts';
import { barometerPa } from '../../src/sim/components/Barometer.ts';

test('pressure factors are the conventional ones of NIST SP 811 (2008), appendix B.8', () => {
  expect(PA_PER_INHG).toBe(3386.389);
  expect(PA_PER_INH2O).toBe(249.0889);
  expect(PA_PER_PSI).toBe(6894.757);
});

test('the neighbours in the same table bound how far another choice of inch would move a reading', () => {
  // NIST SP 811: inHg at 32 °F 3386.38, at 60 °F 3376.85; inH2O at 39.2 °F 249.082, at 60 °F 248.84; mmHg 133.3224; mmH2O 9.80665
  expect(Math.abs(PA_PER_INHG / 3386.38 - 1)).toBeLessThan(3e-6);
  expect(PA_PER_INHG / 3376.85 - 1).toBeCloseTo(0.0028, 4);
  expect(Math.abs(PA_PER_INH2O / 249.082 - 1)).toBeLessThan(3e-5);
  expect(PA_PER_INH2O / 248.84 - 1).toBeCloseTo(0.001, 4);
  expect(PA_PER_INHG).toBeCloseTo(25.4 * 133.3224, 2);
  expect(PA_PER_INH2O).toBeCloseTo(25.4 * 9.80665, 3);
});

test('derived pairs: computed from the NIST SP 811 factors', () => {
  expect(paToInH2O(inHgToPa(1))).toBeCloseTo(13.5951, 4);
  expect(paToInH2O(PA_PER_PSI)).toBeCloseTo(27.68, 2);
  expect(inHgToPa(20)).toBeCloseTo(67_728, 0);
  expect(inHgToPa(18)).toBeCloseTo(60_955, 0);
  expect(inH2OToPa(14)).toBeCloseTo(3487.2, 1);
  expect(inH2OToPa(14) / PA_PER_PSI).toBeCloseTo(0.5058, 4); // 14 inH2O is about half a psi, not one
  expect(paToInHg(101_325)).toBeCloseTo(29.9213, 4); // standard atmosphere, 101 325 Pa exactly (ISO 2533, from memory)
});

test('barometer by geopotential altitude: US Standard Atmosphere 1976', () => {
  // 0 m is the standard's own; the others are computed from its stated formula with the exponent 5.25588
  const table = [
    [0, 101_325],
    [500, 95_461],
    [1000, 89_875],
    [1500, 84_556],
    [2000, 79_495],
    [2500, 74_683],
    [3000, 70_109],
  ] as const;
  for (const [altitudeM, pa] of table) expect(Math.abs(barometerPa(altitudeM) - pa)).toBeLessThan(1);
});

test('the published table row for 2000 m geometric, 7.9501e4 Pa, at its geopotential altitude', () => {
  // US Standard Atmosphere 1976: H = r·Z/(r + Z) with r = 6 356 766 m; seen in a second-hand transcription
  const geopotentialM = (6_356_766 * 2000) / (6_356_766 + 2000);
  expect(Math.abs(barometerPa(geopotentialM) - 79_501)).toBeLessThan(1);
});

test('the barometer refuses altitudes outside the troposphere', () => {
  expect(() => barometerPa(12_000)).toThrow('troposphere');
});
