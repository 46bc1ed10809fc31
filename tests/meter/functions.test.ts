import { describe, expect, test } from 'vitest';
import { Clamp } from '../../src/sim/components/Clamp.ts';
import { Resistor } from '../../src/sim/components/Resistor.ts';
import { VoltageSource } from '../../src/sim/components/VoltageSource.ts';
import { displayOf } from '../../src/sim/devices/meter/display.ts';
import { gather } from '../../src/sim/devices/meter/gather.ts';
import { freshMeter } from '../../src/sim/devices/meter/MeterState.ts';
import { takeReading } from '../../src/sim/devices/meter/takeReading.ts';
import type { Circuit } from '../../src/sim/network/Circuit.ts';
import { type LiveFunction, MeterOnCircuit } from '../support/meterOnCircuit.ts';

type Wiring = (circuit: Circuit, red: number, black: number) => void;

/** A source of volts behind ohms, its negative side on black, which is the reference. */
function source(volts: number, ohms = 0.01): Wiring {
  return (c, red, black) => {
    c.add(new Resistor(black, 0, 1e-3));
    c.add(new VoltageSource(red, black, volts, ohms));
  };
}

function resistor(ohms: number): Wiring {
  return (c, red, black) => {
    c.add(new Resistor(black, 0, 1e-3));
    c.add(new Resistor(red, black, ohms));
  };
}

const nothing: Wiring = (c, _red, black) => {
  c.add(new Resistor(black, 0, 1e-3));
};

const ERRORLESS = { own: 0, noise: 0, sag: 0, rangeHeld: false };

/** One function fed by windows of samples taken every tenth of a millisecond. */
function sampled(of: LiveFunction, wave: (seconds: number) => number, windows: number): string[] {
  const state = freshMeter(of);
  const step = 0.0001;
  return Array.from({ length: windows }, (_, window) => {
    for (let i = 0; i < 2500; i++) gather(state, wave((window * 2500 + i + 0.5) * step), step);
    takeReading(state, of, ERRORLESS);
    return displayOf(state, of, 'off').digits;
  });
}

describe('each function against the known circuit', () => {
  test.each([
    [0.0251, '25.1', 'mV'],
    [0.4321, '432.1', 'mV'],
    [1.5, '1.500', 'V'],
    [12.66, '12.66', 'V'],
    [-12.66, '-12.66', 'V'],
    [300, '300.0', 'V'],
    [700, 'OL', 'V'],
  ])('DC volts of a %f V source: %s %s', (volts, digits, unit) => {
    expect(new MeterOnCircuit('volts-dc', source(volts)).settled()).toMatchObject({ digits, unit });
  });

  test.each([
    [32, '32.0', 'Ω'],
    [470, '470.0', 'Ω'],
    [2200, '2.200', 'kΩ'],
    [33_000, '33.00', 'kΩ'],
    [470_000, '470.0', 'kΩ'],
    [3.3e6, '3.300', 'MΩ'],
    [22e6, '22.00', 'MΩ'],
    [200e6, 'OL', 'MΩ'],
  ])('ohms of a %d Ω resistor: %s %s', (ohms, digits, unit) => {
    expect(new MeterOnCircuit('ohms', resistor(ohms)).settled()).toMatchObject({ digits, unit });
  });

  test('ohms, continuity and diode of nothing: over range', () => {
    for (const of of ['ohms', 'continuity', 'diode'] as const) {
      expect(new MeterOnCircuit(of, nothing).settled().digits).toBe('OL');
    }
  });

  test('diode: reads the volts its milliamp makes; over range above 2 V and the wrong way round', () => {
    const silicon: Wiring = (c, red, black) => {
      c.add(new Resistor(black, 0, 1e-3));
      c.add(new Clamp(red, black, 0.6, 20));
    };
    // (3 V − 0.6 V) / (2400 Ω + 20 Ω) = 0.992 mA, so 0.6 V + 0.020 V at the jacks.
    expect(new MeterOnCircuit('diode', silicon).settled()).toMatchObject({ digits: '0.620', unit: 'V' });
    const reversed: Wiring = (c, red, black) => {
      c.add(new Resistor(black, 0, 1e-3));
      c.add(new Clamp(black, red, 0.6, 20));
    };
    expect(new MeterOnCircuit('diode', reversed).settled().digits).toBe('OL');
    const white: Wiring = (c, red, black) => {
      c.add(new Resistor(black, 0, 1e-3));
      c.add(new Clamp(red, black, 2.7, 20));
    };
    expect(new MeterOnCircuit('diode', white).settled().digits).toBe('OL');
  });

  test('low-impedance volts load what they measure: 5.8 V behind 33 kΩ reads 0.483 V at 3 kΩ, 5.78 V at 10 MΩ', () => {
    // 5.8 · 3 / (33 + 3) and 5.8 · 10 / (10 + 0.033), closed form.
    const ghost = new MeterOnCircuit('volts-dc', source(5.8, 33_000));
    expect(ghost.settled()).toMatchObject({ digits: '5.78', unit: 'V' });
    expect(ghost.turn('volts-low-z').settled()).toMatchObject({ digits: '483.3', unit: 'mV' });
  });

  test('24 V over two 250 MΩ: 0.889 V (Lessons in Electric Circuits I, chapter 8)', () => {
    const divider: Wiring = (c, red, black) => {
      const top = c.node('top');
      c.add(new Resistor(black, 0, 1e-3));
      c.add(new VoltageSource(top, black, 24));
      c.add(new Resistor(top, red, 250e6));
      c.add(new Resistor(red, black, 250e6));
    };
    expect(new MeterOnCircuit('volts-dc', divider).settled()).toMatchObject({ digits: '0.889', unit: 'V' });
  });

  test('ohms on a live circuit: volts make a false number, below zero too; much of them is over range, and survived', () => {
    // A ground wire that drops 25 mV while the solenoid runs, 0.065 Ω: the meter says +25.6 Ω or −24.4 Ω.
    const one = new MeterOnCircuit('ohms', source(0.025, 0.065)).settled();
    expect(Number(one.digits)).toBeCloseTo((1000 * 0.025) / (1 - 0.025), 0);
    const other = new MeterOnCircuit('ohms', source(-0.025, 0.065)).settled();
    expect(Number(other.digits)).toBeCloseTo((-1000 * 0.025) / (1 + 0.025), 0);
    const live = new MeterOnCircuit('ohms', source(12.66));
    expect(live.settled().digits).toBe('OL');
    expect(new MeterOnCircuit('ohms', source(-12.66)).settled().digits).toBe('OL');
    expect(live.turn('volts-dc').settled().digits).toBe('12.66');
  });

  test('amps are what the shunt makes of them', () => {
    const flow = (of: LiveFunction, shuntVolts: number) => sampled(of, () => shuntVolts, 6).at(-1);
    expect(flow('milliamps-dc', 0.0123)).toBe('12.30');
    expect(flow('milliamps-dc', 0.395)).toBe('395.0');
    expect(flow('amps-dc', 0.00395)).toBe('0.395');
    expect(flow('amps-dc', 0.0832)).toBe('8.32');
    expect(flow('amps-dc', -0.00395)).toBe('-0.395');
    expect(flow('amps-dc', 0.12)).toBe('OL');
  });
});

describe('AC volts: RMS of the alternating part', () => {
  const sine = (amplitude: number, hertz: number) => (t: number) =>
    amplitude * Math.sin(2 * Math.PI * hertz * t);

  test('a sine of 10 V at 60 Hz reads 7.07 V, and the same on 5 V of DC', () => {
    expect(Number(sampled('volts-ac', sine(10, 60), 8).at(-1))).toBeCloseTo(10 / Math.sqrt(2), 2);
    const riding = sampled('volts-ac', (t) => 5 + sine(10, 60)(t), 8);
    expect(Number(riding.at(-1))).toBeCloseTo(10 / Math.sqrt(2), 2);
  });

  test('a square wave between 0 and 12 V, half of the time each: 6 V; a tenth of the time: 3.6 V', () => {
    // Law: A · √(d (1 − d)).
    const square = (duty: number) => (t: number) => ((t * 100) % 1 < duty ? 12 : 0);
    expect(Number(sampled('volts-ac', square(0.5), 8).at(-1))).toBeCloseTo(6, 2);
    expect(Number(sampled('volts-ac', square(0.1), 8).at(-1))).toBeCloseTo(3.6, 2);
  });

  test('a triangle of 6 V reads 6/√3 V: true RMS, not an average scaled for sines', () => {
    const triangle = (t: number) => 6 * (4 * Math.abs(((t * 100) % 1) - 0.5) - 1);
    expect(Number(sampled('volts-ac', triangle, 8).at(-1))).toBeCloseTo(6 / Math.sqrt(3), 2);
  });

  test('a steady level reads nothing', () => {
    expect(new MeterOnCircuit('volts-ac', source(12.66)).settled()).toMatchObject({
      digits: '0.0',
      unit: 'mV',
    });
  });
});

describe('DC volts average', () => {
  test('a spike of 4 ms does not show on the digits as a spike', () => {
    // 40 V for 4 ms in a window of a quarter second that stands at 12 V otherwise: 12 + 28 · 4/250 V = 12.45 V.
    const shown = sampled('volts-dc', (t) => (t >= 1 && t < 1.004 ? 40 : 12), 8);
    expect(Number(shown[4])).toBeCloseTo(12.45, 1);
    expect(shown[3]).toBe('12.00');
    expect(shown[5]).toBe('12.00');
  });
});
