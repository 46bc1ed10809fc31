import { describe, expect, test } from 'vitest';
import { fnv1a32 } from '../../src/base/hash.ts';
import { Random } from '../../src/base/Random.ts';
import { displayOf } from '../../src/sim/devices/meter/display.ts';
import { gather } from '../../src/sim/devices/meter/gather.ts';
import { freshMeter } from '../../src/sim/devices/meter/MeterState.ts';
import { AMP_SHUNT_OHMS, METER_SPECS, MILLIAMP_SHUNT_OHMS } from '../../src/sim/devices/meter/meterSpecs.ts';
import { type MeterRange, rangesOf } from '../../src/sim/devices/meter/ranges.ts';
import { readingNoise } from '../../src/sim/devices/meter/readingNoise.ts';
import { takeReading } from '../../src/sim/devices/meter/takeReading.ts';
import { METER_FUNCTIONS } from '../../src/sim/devices/places.ts';
import { LEAK_DETECTION_PUMP } from '../../src/sim/rigs/leakDetectionPump/leakDetectionPump.ts';
import { drawnParameters } from '../../src/sim/rigs/tolerances.ts';
import type { LiveFunction } from '../support/meterOnCircuit.ts';

const LIVE = METER_FUNCTIONS.filter((one): one is LiveFunction => one !== 'off');
const METERS = 2000;
const READINGS_EACH = 50;

interface Meter {
  readonly errors: Readonly<Record<LiveFunction, number>>;
  readonly noiseSeed: number;
}

/** A meter as a sitting of this seed has it. */
function meterOf(seed: string): Meter {
  const drawn = drawnParameters(LEAK_DETECTION_PUMP, seed, []);
  const errors = Object.fromEntries(LIVE.map((each) => [each, drawn[METER_SPECS[each].error]]));
  return {
    errors: errors as Meter['errors'],
    noiseSeed: fnv1a32(`${seed}/meter-noise`),
  };
}

/** Gathers a window in which `value` (volts, RMS volts, ohms or amps) stood at the jacks. */
function offer(
  state: ReturnType<typeof freshMeter>,
  of: LiveFunction,
  value: number,
  range: MeterRange,
): void {
  const { makes, looksAt } = METER_SPECS[of];
  if (makes === 'rms') {
    gather(state, value, 0.125);
    gather(state, -value, 0.125);
    return;
  }
  const shunt = looksAt === 'amp-shunt' ? AMP_SHUNT_OHMS : MILLIAMP_SHUNT_OHMS;
  const overOhms = (range.sourceVolts * value) / (range.sourceOhms + value);
  gather(state, makes === 'ohms' ? overOhms : makes === 'amps' ? value * shunt : value, 0.25);
}

/** What one meter shows of `value`, in SI; null over range. */
function shown(meter: Meter, of: LiveFunction, at: number, value: number, reading: number): number | null {
  const range = rangesOf(of)[at] as MeterRange;
  const state = { ...freshMeter(of), range: at };
  offer(state, of, value, range);
  const noise = readingNoise(meter.noiseSeed, reading);
  takeReading(state, of, { own: meter.errors[of], noise, sag: 0, rangeHeld: true });
  return displayOf(state, of, 'off').value;
}

/** Half-width as a maker states it: ±(per cent of reading + counts). */
function statedBound(range: MeterRange, value: number): number {
  return (range.accuracy.percent / 100) * Math.abs(value) + range.accuracy.counts * range.resolution;
}

interface Spread {
  readonly shares: readonly number[];
  readonly worst: number;
}

/** Errors of many seeded readings as shares of the stated bound, over functions, ranges and values of one share of scale. */
function errorsOf(from: number, to: number): Spread {
  const shares: number[] = [];
  let worst = 0;
  for (let i = 0; i < METERS; i++) {
    const meter = meterOf(`meter ${i}`);
    const random = Random.of(`meter ${i}`, 'values');
    for (let reading = 0; reading < READINGS_EACH; reading++) {
      const of = LIVE[Math.floor(random.next() * LIVE.length)] as LiveFunction;
      const at = Math.floor(random.next() * rangesOf(of).length);
      const range = rangesOf(of)[at] as MeterRange;
      const positive = METER_SPECS[of].makes === 'rms' || METER_SPECS[of].makes === 'ohms';
      const size = (from + random.next() * (to - from)) * range.mostCounts * range.resolution;
      const value = positive || random.next() < 0.5 ? size : -size;
      const display = shown(meter, of, at, value, reading);
      if (display === null) continue;
      const error = Math.abs(display - value) - 1e-9 * Math.abs(value);
      worst = Math.max(worst, error / statedBound(range, value), error / statedBound(range, display));
      shares.push((display - value) / statedBound(range, value));
    }
  }
  return { shares, worst };
}

describe('accuracy', () => {
  const whole = errorsOf(0.02, 0.94);

  test('100 000 seeded readings over all functions, ranges and values: never outside ±(% of reading + counts)', () => {
    expect(whole.shares.length).toBe(METERS * READINGS_EACH);
    expect(whole.worst).toBeLessThanOrEqual(1);
    // The bound is used, not merely kept.
    expect(whole.worst).toBeGreaterThan(0.97);
  });

  test('near zero, where a step of the last digit is half of the bound, and at full scale: never outside either', () => {
    expect(errorsOf(0, 0.02).worst).toBeLessThanOrEqual(1);
    expect(errorsOf(0.94, 1.01).worst).toBeLessThanOrEqual(1);
  });

  test('the errors spread evenly: standard uncertainty a/√3 within 3 % (JCGM 100:2008, 4.3.7, from memory)', () => {
    const { shares } = whole;
    const mean = shares.reduce((sum, each) => sum + each, 0) / shares.length;
    const square = shares.reduce((sum, each) => sum + each * each, 0) / shares.length;
    const ratio = Math.sqrt(square - mean * mean) * Math.sqrt(3);
    console.info(`spread: ${ratio.toFixed(4)} of a/√3, mean ${mean.toFixed(4)} of a`);
    expect(Math.abs(mean)).toBeLessThan(0.02);
    expect(Math.abs(ratio - 1)).toBeLessThan(0.03);
  });

  test('each tenth of the bound holds a tenth of the errors, within 7 % of that', () => {
    const tenths = new Array<number>(10).fill(0);
    for (const share of whole.shares) {
      const tenth = Math.min(Math.max(Math.floor((share + 1) * 5), 0), 9);
      tenths[tenth] = (tenths[tenth] as number) + 1;
    }
    // The outermost tenths lose what the step of the last digit takes from them.
    for (const count of tenths.slice(1, -1)) {
      expect(Math.abs((count * 10) / whole.shares.length - 1)).toBeLessThan(0.07);
    }
  });

  test('12.60 V at 0.01 V, ±(0.5 % + 2): half-width 0.083 V, standard uncertainty 0.048 V', () => {
    // Computed from the stated formula; division by √3 as JCGM 100:2008, 4.3.7, from memory.
    const range = rangesOf('volts-dc')[2] as MeterRange;
    expect(statedBound(range, 12.6)).toBeCloseTo(0.083, 3);
    const errors = Array.from({ length: 4000 }, (_, i) => {
      const display = shown(meterOf(`battery ${i}`), 'volts-dc', 2, 12.6, i);
      return (display ?? 0) - 12.6;
    });
    const spread = Math.sqrt(errors.reduce((sum, each) => sum + each * each, 0) / errors.length);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(0.083 + 1e-9);
    expect(Math.abs(spread / 0.048 - 1)).toBeLessThan(0.04);
  });

  test('one meter keeps its own error: the readings of one sitting differ by the flicker of the last digit alone', () => {
    let flickers = 0;
    for (let i = 0; i < 40; i++) {
      const meter = meterOf(`own ${i}`);
      const counts = new Set<number>();
      for (let reading = 0; reading < 400; reading++) {
        counts.add(Math.round((shown(meter, 'volts-dc', 2, 12.663, reading) ?? 0) * 100));
      }
      expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(2);
      if (counts.size > 1) flickers += 1;
    }
    // At the very edge of the bound the flicker may be cut to nothing.
    expect(flickers).toBeGreaterThanOrEqual(30);
  });

  test('with its jacks shorted the meter shows zero and at most its last digit flickers', () => {
    for (let i = 0; i < 200; i++) {
      const meter = meterOf(`shorted ${i}`);
      for (const of of LIVE) {
        const range = rangesOf(of)[0] as MeterRange;
        const display = shown(meter, of, 0, 0, i) ?? Number.NaN;
        expect(Math.abs(display)).toBeLessThanOrEqual(1.001 * range.resolution);
      }
    }
  });
});

describe('noise of a reading', () => {
  test('a pure function of seed and number, even between −1 and 1, unrelated from reading to reading', () => {
    const seed = fnv1a32('noise');
    const many = Array.from({ length: 100_000 }, (_, i) => readingNoise(seed, i));
    expect(many[777]).toBe(readingNoise(seed, 777));
    expect(many[777]).not.toBe(readingNoise(seed + 1, 777));
    const mean = many.reduce((sum, each) => sum + each, 0) / many.length;
    const square = many.reduce((sum, each) => sum + each * each, 0) / many.length;
    const pairs = many.slice(1).reduce((sum, each, i) => sum + each * (many[i] as number), 0) / many.length;
    // Standard errors of 1e5 draws: mean 0.0018, mean square 0.0009, pairs 0.0011.
    expect(Math.abs(mean)).toBeLessThan(0.008);
    expect(Math.abs(square - 1 / 3)).toBeLessThan(0.004);
    expect(Math.abs(pairs)).toBeLessThan(0.005);
  });
});
