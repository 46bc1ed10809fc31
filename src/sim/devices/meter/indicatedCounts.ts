import { clamp } from '../../../base/maths.ts';
import type { MeterRange } from './ranges.ts';

/** The errors of one reading, both −1 to 1. */
export interface ReadingErrors {
  /** The instrument's own, drawn once for the meter: a share of the accuracy bound. */
  readonly own: number;
  /** The last digit's flicker, new with every reading. */
  readonly noise: number;
}

/** Counts by which the last digit flickers, as a half-width. */
const FLICKER_COUNTS = 0.6;
/** The meter zeroes itself: below so many counts its own error dwindles away with the reading. */
const ZEROED_COUNTS = 50;

/**
 * Half-width a of the accuracy bound around a true value, in counts, the step of the last digit included:
 * a = (p·|x| + n) / (1 + p). So measured it holds whether p is taken of the true value or of the digits shown.
 */
export function boundCounts(exact: number, { accuracy }: MeterRange): number {
  const share = accuracy.percent / 100;
  return (share * Math.abs(exact) + accuracy.counts) / (1 + share);
}

/**
 * The whole number of counts a meter shows for `exact` counts at its jacks.
 * The own error takes its share of the bound, the flicker is added and thrown back at the bound, so that over many
 * meters the error fills the bound evenly (a rectangular distribution of half-width a) and never leaves it; of the
 * two neighbouring counts, one outside the bound is not taken. `exact` must be finite.
 */
export function indicatedCounts(exact: number, range: MeterRange, { own, noise }: ReadingErrors): number {
  const bound = boundCounts(exact, range);
  const side = clamp(exact / ZEROED_COUNTS, -1, 1);
  const error = thrownBack(own * bound * side + noise * FLICKER_COUNTS, bound);
  const nearest = Math.floor(exact + error + 0.5);
  return clamp(nearest, -Math.floor(bound - exact), Math.floor(exact + bound));
}

/** Reflects at ±bound what lies beyond; an even spread stays even. */
function thrownBack(error: number, bound: number): number {
  if (error > bound) return 2 * bound - error;
  if (error < -bound) return -2 * bound - error;
  return error;
}
