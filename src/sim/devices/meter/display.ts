import type { MeterFunction } from '../places.ts';
import { isSettled, type MeterState, rangeOf } from './MeterState.ts';
import { COUNTS } from './ranges.ts';

/** What stands on the LCD. */
export interface LcdReading {
  readonly digits: string;
  readonly unit: '' | 'mV' | 'V' | 'Ω' | 'kΩ' | 'MΩ';
  readonly value: number | null;
  readonly bar: number;
  readonly settled: boolean;
}

const DARK: LcdReading = { digits: '', unit: '', value: null, bar: 0, settled: false };

/** The display of a meter state: four digits with the range's decimals, OL over range, dashes while it ranges. */
export function displayOf(state: MeterState, meterFunction: MeterFunction): LcdReading {
  const range = rangeOf(state, meterFunction);
  if (range === null) return DARK;
  if (!state.shown) return { ...DARK, digits: '----', unit: range.unit };
  if (state.counts === null)
    return { digits: 'OL', unit: range.unit, value: null, bar: 1, settled: isSettled(state) };
  const value = state.counts * range.resolution;
  return {
    digits: fixed(value / range.scale, range.decimals),
    unit: range.unit,
    value,
    bar: Math.min(Math.abs(state.counts) / COUNTS, 1),
    settled: isSettled(state),
  };
}

/** Decimal text without a minus sign on zero. */
function fixed(x: number, decimals: number): string {
  const text = x.toFixed(decimals);
  return Number(text) === 0 ? (0).toFixed(decimals) : text;
}
