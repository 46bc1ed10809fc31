import type { MeterFunction } from '../places.ts';
import { COUNTS, type MeterRange, RANGE_DOWN_SHARE, rangesOf, TONE_BELOW_OHMS } from './ranges.ts';

/** The meter between two readings. Plain JSON. */
export interface MeterState {
  range: number;
  /** Volt-seconds and seconds gathered at the input since the last reading: the meter integrates, so a spike of
   * a few milliseconds does not show on its digits. */
  voltSeconds: number;
  seconds: number;
  /** Counts shown, or null for over range; `shown` is false until the first reading after a change of function. */
  counts: number | null;
  shown: boolean;
  /** Readings in a row that agree within two counts on one range. */
  agreeing: number;
  tone: boolean;
}

export const READINGS_PER_SECOND = 4;
const AGREE_COUNTS = 2;
const SETTLED_READINGS = 2;

/** A meter freshly turned to a function: it starts on the range a practitioner would expect it to try first. */
export function freshMeter(meterFunction: MeterFunction): MeterState {
  const ranges = rangesOf(meterFunction);
  return {
    range: meterFunction === 'volts-dc' ? ranges.length - 1 : 0,
    voltSeconds: 0,
    seconds: 0,
    counts: null,
    shown: false,
    agreeing: 0,
    tone: false,
  };
}

export function rangeOf(state: MeterState, meterFunction: MeterFunction): MeterRange | null {
  return rangesOf(meterFunction)[state.range] ?? null;
}

/** Ohms that a source behind a resistor sees when `volts` stand across the jacks; infinite when nothing loads it. */
function ohmsFrom(volts: number, range: MeterRange): number {
  const drop = range.sourceVolts - volts;
  if (drop <= range.sourceVolts * 1e-9) return Number.POSITIVE_INFINITY;
  return Math.max((range.sourceOhms * volts) / drop, 0);
}

/** Instrument errors of one reading: gain as a share of reading, noise as a number in −1…1. */
export interface ReadingErrors {
  readonly gain: number;
  readonly noise: number;
}

/** Share of one count by which the last digit flickers. */
const NOISE_COUNTS = 0.6;

/**
 * Takes one reading from what was integrated at the jacks since the last, with autorange: one range a reading.
 * Law of the ohms functions: a known source behind a known resistance, R = Rs·v/(Vs − v); a live circuit falsifies it.
 */
export function takeReading(state: MeterState, meterFunction: MeterFunction, errors: ReadingErrors): void {
  const ranges = rangesOf(meterFunction);
  const range = ranges[state.range];
  if (range === undefined || state.seconds <= 0) return;
  const mean = state.voltSeconds / state.seconds;
  state.voltSeconds = 0;
  state.seconds = 0;
  const raw = meterFunction === 'volts-dc' ? mean : ohmsFrom(mean, range);
  const value = raw * (1 + errors.gain);
  const exact = value / range.resolution;
  const over = !(Math.abs(exact) < COUNTS - 0.5);
  if (over && state.range < ranges.length - 1) {
    state.range += 1;
    state.agreeing = 0;
    state.tone = false;
    return;
  }
  const counts = over ? null : Math.floor(exact + errors.noise * NOISE_COUNTS + 0.5);
  const agrees =
    state.shown &&
    (counts === null
      ? state.counts === null
      : state.counts !== null && Math.abs(counts - state.counts) <= AGREE_COUNTS);
  state.agreeing = agrees ? state.agreeing + 1 : 0;
  state.counts = meterFunction === 'volts-dc' || counts === null ? counts : Math.max(counts, 0);
  state.shown = true;
  state.tone = meterFunction === 'continuity' && value < TONE_BELOW_OHMS;
  if (!over && Math.abs(value) < RANGE_DOWN_SHARE * range.fullScale && state.range > 0) {
    state.range -= 1;
    state.shown = false;
    state.agreeing = 0;
  }
}

/** True once the reading has stood still long enough to be written down. */
export function isSettled(state: MeterState): boolean {
  return state.shown && state.agreeing >= SETTLED_READINGS;
}
