import { describe, expect, test } from 'vitest';
import { Resistor } from '../../src/sim/components/Resistor.ts';
import { VoltageSource } from '../../src/sim/components/VoltageSource.ts';
import { displayOf } from '../../src/sim/devices/meter/display.ts';
import { gather } from '../../src/sim/devices/meter/gather.ts';
import { freshMeter } from '../../src/sim/devices/meter/MeterState.ts';
import { rangeName, rangesOf } from '../../src/sim/devices/meter/ranges.ts';
import { takeReading } from '../../src/sim/devices/meter/takeReading.ts';
import { type LiveFunction, MeterOnCircuit } from '../support/meterOnCircuit.ts';

function volts(of: LiveFunction, value: number): MeterOnCircuit {
  return new MeterOnCircuit(of, (c, red, black) => {
    c.add(new Resistor(black, 0, 1e-3));
    c.add(new VoltageSource(red, black, value, 0.01));
  });
}

function ohms(value: number): MeterOnCircuit {
  return new MeterOnCircuit('ohms', (c, red, black) => {
    c.add(new Resistor(black, 0, 1e-3));
    c.add(new Resistor(red, black, value));
  });
}

function digits(meter: MeterOnCircuit, count: number): string[] {
  return meter.readings(count).map((each) => each.digits);
}

/** Settled at which reading, counted from the turn of the selector. */
function settlesAt(meter: MeterOnCircuit): number {
  return meter.readings(40).findIndex((each) => each.settled) + 1;
}

const ERRORLESS = { own: 0, noise: 0, sag: 0, rangeHeld: false };

/** Display after each window of a quarter second in which these volts stood at the jacks. */
function windows(of: LiveFunction, means: readonly number[]): string[] {
  const state = freshMeter(of);
  return means.map((mean) => {
    gather(state, mean, 0.25);
    takeReading(state, of, ERRORLESS);
    return displayOf(state, of, 'off').digits;
  });
}

describe('ranges', () => {
  test('are named as the trade writes them, and 6000 counts fill them', () => {
    expect(rangesOf('volts-dc').map(rangeName)).toEqual(['600 mV', '6 V', '60 V', '600 V']);
    expect(rangesOf('ohms').map(rangeName)).toEqual(['600 Ω', '6 kΩ', '60 kΩ', '600 kΩ', '6 MΩ', '60 MΩ']);
    expect(rangesOf('milliamps-dc').map(rangeName)).toEqual(['60 mA', '600 mA']);
    expect(rangesOf('amps-dc').map(rangeName)).toEqual(['6 A', '10 A']);
    expect(rangesOf('off')).toEqual([]);
    for (const range of [...rangesOf('volts-dc'), ...rangesOf('volts-ac'), ...rangesOf('ohms')]) {
      expect(range.fullScale / range.resolution).toBeCloseTo(6000, 6);
    }
  });

  test('a 6000-count display shows 5.999 V and then the next range: 6.00', () => {
    // Convention: an N-count display shows up to N − 1.
    expect(volts('volts-dc', 5.999).hold(1).settled().digits).toBe('5.999');
    expect(volts('volts-dc', 6).hold(1).settled().digits).toBe('OL');
    expect(volts('volts-dc', 6).settled().digits).toBe('6.00');
  });
});

describe('autorange', () => {
  test('one range a reading, dashes between: battery at once, millivolts two ranges further down', () => {
    expect(digits(volts('volts-dc', 12.66), 3)).toEqual(['12.66', '12.66', '12.66']);
    expect(digits(volts('volts-dc', 0.0251), 5)).toEqual(['----', '----', '25.1', '25.1', '25.1']);
    expect(digits(volts('volts-dc', 300), 3)).toEqual(['----', '300.0', '300.0']);
    // The input filter is still charging when the third comes.
    expect(digits(ohms(33_000), 4)).toEqual(['----', '----', '33.02', '33.00']);
  });

  test('readings until settled: 3 for battery volts, 5 for millivolts, 3 for the coil, 8 for an open circuit', () => {
    expect(settlesAt(volts('volts-dc', 12.66))).toBe(3);
    expect(settlesAt(volts('volts-dc', 0.0251))).toBe(5);
    expect(settlesAt(ohms(32))).toBe(3);
    expect(settlesAt(ohms(1e12))).toBe(8);
  });

  test('megohms are some time on their way, the more the higher', () => {
    const kilohms = settlesAt(ohms(33_000));
    const megohms = settlesAt(ohms(3.3e6));
    const many = settlesAt(ohms(30e6));
    expect(megohms).toBeGreaterThan(kilohms);
    expect(many).toBeGreaterThan(megohms);
    expect(many).toBeLessThan(20);
    const onTheWay = ohms(30e6)
      .readings(20)
      .filter((each) => each.value !== null)
      .map((each) => each.value as number);
    expect(onTheWay[0]).toBeGreaterThan(30e6 * 1.01);
    for (const [i, value] of onTheWay.slice(1).entries()) {
      expect(value).toBeLessThanOrEqual(onTheWay[i] as number);
    }
    expect(onTheWay.at(-1)).toBeCloseTo(30e6, -4);
  });

  test('a gap between ranging up and down: nothing steady makes it hunt', () => {
    for (let value = 0.3; value < 70; value *= 1.013) {
      const shown = digits(volts('volts-dc', value).withOwnError(1), 12).slice(4);
      expect(shown.includes('----'), `${value} V`).toBe(false);
    }
    // A reading is kept between 90 and 100 % of the lower range, from whichever side it came.
    expect(windows('volts-dc', [5.7, 5.7, 5.7])).toEqual(['5.70', '5.70', '5.70']);
    expect(windows('volts-dc', [3, 3, 5.7, 5.7])).toEqual(['----', '3.000', '5.699', '5.700']);
  });

  test('what swings from window to window makes it hunt', () => {
    const swing = windows('volts-dc', [12, 0, 12, 0, 12, 0, 12, 0, 12, 0, 12, 0]);
    expect(swing[0]).toBe('12.00');
    expect(swing.filter((each) => each === '----').length).toBeGreaterThan(5);
  });

  test('a held range stays, with fewer figures, or over range', () => {
    expect(digits(volts('volts-dc', 0.0251).hold(2), 3)).toEqual(['0.03', '0.03', '0.03']);
    expect(digits(volts('volts-dc', 12.66).hold(0), 3)).toEqual(['OL', 'OL', 'OL']);
    expect(digits(ohms(32).hold(1), 3)).toEqual(['0.032', '0.032', '0.032']);
  });

  test('held on one range, a swing is read window by window', () => {
    const state = { ...freshMeter('volts-dc'), range: 2 };
    const shown = [12, 0, 12, 0].map((mean) => {
      gather(state, mean, 0.25);
      takeReading(state, 'volts-dc', { ...ERRORLESS, rangeHeld: true });
      return Number(displayOf(state, 'volts-dc', 'off').digits);
    });
    expect(shown).toEqual([12, 0, 12, 0]);
  });
});

describe('first reading after a connection', () => {
  test('is on its way when the connection came inside its window', () => {
    const state = { ...freshMeter('volts-dc'), range: 2 };
    const shown = [
      [0, 0],
      [0, 12],
      [12, 12],
      [12, 12],
    ].map(([first = 0, second = 0]) => {
      gather(state, first, 0.125);
      gather(state, second, 0.125);
      takeReading(state, 'volts-dc', { ...ERRORLESS, rangeHeld: true });
      return displayOf(state, 'volts-dc', 'off').digits;
    });
    expect(shown).toEqual(['0.00', '6.00', '12.00', '12.00']);
  });
});
