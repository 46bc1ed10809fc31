import type { MeterRange } from './ranges.ts';

/** One reading as it came out: on which range, how many counts, and whether it was over range. Plain JSON. */
export interface Reading {
  readonly range: number;
  readonly counts: number;
  /** 1 over range, −1 over range with a minus sign, 0 a number. */
  readonly over: -1 | 0 | 1;
}

const AGREE_COUNTS = 2;

/** True when two readings stand on one range within two counts of each other. */
export function readingsAgree(a: Reading, b: Reading): boolean {
  return a.range === b.range && a.over === b.over && Math.abs(a.counts - b.counts) <= AGREE_COUNTS;
}

/** The reading's value in SI; infinite when over range. */
export function valueIn({ range, counts, over }: Reading, ranges: readonly MeterRange[]): number {
  if (over !== 0) return over * Number.POSITIVE_INFINITY;
  return counts * (ranges[range]?.resolution ?? 0);
}
