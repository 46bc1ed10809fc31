import type { Tick } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { Moment } from './Timeline.ts';

/** What stood at a tick: the latest moment not after it. Between moments nothing showed anything new. */
export function standingAt(moments: readonly Moment[], tick: Tick): Observation | null {
  let low = 0;
  let high = moments.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if ((moments[middle]?.tick ?? 0) <= tick) low = middle + 1;
    else high = middle;
  }
  return moments[low - 1]?.seen ?? null;
}
