import type { Tick } from '../../base/ticks.ts';
import { UNIT_PORTS } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
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
    else if (!fitted && isOnTruck(seen)) {
      fitted = true;
      fits.push(tick);
    }
  }
  return fits;
}

function isOnTruck({ plug, sites }: Observation): boolean {
  const hoses = UNIT_PORTS.map((port) => sites[port]);
  return (
    plug.mated ||
    hoses.includes('canister-hose') ||
    hoses.includes('air-hose') ||
    hoses.includes('engine-hose')
  );
}
