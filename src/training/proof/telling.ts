import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { Telling } from './FaultReadings.ts';

/** Whether what was shown with a fault tells it from what was shown without, on the same bench and on other good ones. */
export function tellingOf(
  good: readonly Outcome[],
  faulted: readonly Outcome[],
  others: readonly Outcome[],
): Telling {
  const same = good.length === faulted.length && faulted.every((one, i) => areAlike(one, good[i]));
  if (same) return 'same';
  const known = [...good, ...others];
  if (faulted.length === 0) return 'tells';
  return faulted.every((one) => isKnown(one, known)) ? 'own-only' : 'tells';
}

/** Instruments show no difference between the two: each may be off by its half-width. */
function areAlike(one: Outcome, other: Outcome | undefined): boolean {
  if (other === undefined) return false;
  if (one.kind !== 'number' || other.kind !== 'number') return one.value === other.value;
  if (typeof one.value !== 'number' || typeof other.value !== 'number') return one.value === other.value;
  return Math.abs(one.value - other.value) <= one.half + other.half;
}

/** A number lies among those that good benches show, or so near that no instrument could say otherwise; all else is one of theirs. */
function isKnown(one: Outcome, known: readonly Outcome[]): boolean {
  if (one.kind !== 'number' || typeof one.value !== 'number')
    return known.some((other) => areAlike(one, other));
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const other of known) {
    if (other.kind !== 'number' || typeof other.value !== 'number') continue;
    low = Math.min(low, other.value - other.half - one.half);
    high = Math.max(high, other.value + other.half + one.half);
  }
  return low <= one.value && one.value <= high;
}
