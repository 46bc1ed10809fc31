import type { Tick } from '../../base/ticks.ts';
import { isKnownGoodOnTruck } from '../sitting/Spending.ts';
import type { Timeline } from './Timeline.ts';

/**
 * When the known-good unit was put on the truck before the verdict: its plug mated, or a hose of the truck on it; once for each
 * time it was put in place. On the bench, plug apart and on tools only, it may be tested freely.
 */
export function trialFits({ moments, verdict }: Timeline): readonly Tick[] {
  const fits: Tick[] = [];
  let fitted = false;
  for (const { tick, seen } of moments) {
    if (tick > verdict.tick) break;
    if (seen.unit === 'truck') fitted = false;
    else if (!fitted && isKnownGoodOnTruck(seen)) {
      fitted = true;
      fits.push(tick);
    }
  }
  return fits;
}
