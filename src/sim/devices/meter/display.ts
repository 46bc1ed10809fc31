import type { ExtremesMode, MeterFunction } from '../places.ts';
import { DARK, type LcdReading } from './LcdReading.ts';
import { extremesSettled, isSettled, type MeterState } from './MeterState.ts';
import type { Reading } from './Reading.ts';
import { type MeterRange, rangesOf } from './ranges.ts';

/**
 * The display of a meter with a good battery: four digits with the range's decimals, OL over range, dashes while it
 * ranges; the frozen one while held; the lowest or highest where that is asked for.
 */
export function displayOf(
  state: MeterState,
  meterFunction: MeterFunction,
  extremes: ExtremesMode,
): LcdReading {
  if (state.held !== null) return state.held.lcd;
  const ranges = rangesOf(meterFunction);
  const range = ranges[state.range];
  if (range === undefined) return DARK;
  const live = extremes !== 'low' && extremes !== 'high';
  const reading = live ? state.shown : state[extremes];
  if (reading === null) return { ...DARK, digits: '----', unit: range.unit };
  const settled = live ? isSettled(state) : extremesSettled(state);
  return remembered(reading, ranges[reading.range] ?? range, state.zero, settled);
}

interface Written {
  readonly reading: Reading;
  readonly range: MeterRange;
  readonly zero: number | null;
  readonly lcd: LcdReading;
}

/**
 * The last writing of a reading: it stands on the display for a quarter of a second and is looked at more often. What is
 * kept follows from its keys alone.
 */
let last: Written | null = null;

function remembered(reading: Reading, range: MeterRange, zero: number | null, settled: boolean): LcdReading {
  const known = last?.reading === reading && last.range === range && last.zero === zero;
  if (known && last?.lcd.settled === settled) return last.lcd;
  const lcd = written(reading, range, zero, settled);
  last = { reading, range, zero, lcd };
  return lcd;
}

function written(reading: Reading, range: MeterRange, zero: number | null, settled: boolean): LcdReading {
  const { unit, resolution, decimals, scale } = range;
  const zeroCounts = zero === null ? 0 : Math.floor(zero / resolution + 0.5);
  const counts = reading.counts - zeroCounts;
  if (reading.over !== 0 || Math.abs(counts) > range.mostCounts) {
    return { digits: 'OL', unit, value: null, bar: 1, settled };
  }
  const value = counts * resolution;
  const bar = Math.min((Math.abs(counts) * resolution) / range.fullScale, 1);
  return { digits: fixed(value / scale, decimals), unit, value, bar, settled };
}

/** Decimal text without a minus sign on zero. */
function fixed(x: number, decimals: number): string {
  const text = x.toFixed(decimals);
  if (x >= 0) return text;
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
