import { LEAD_ENDS, type LeadEnd } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { isSpotThere } from '../toolOfSpot.ts';
import { boxAround } from './geometry.ts';
import { GRIP_SIZE, type PlacedEnd, placeLeadEnds, tipIsFree } from './leadEnds.ts';
import type { PlacedHotspot } from './PlacedHotspot.ts';
import type { ShelfTab } from './shelfPlan.ts';
import { airSpots } from './spots/airSpots.ts';
import { meterSpots } from './spots/meterSpots.ts';
import { plugSpots } from './spots/plugSpots.ts';
import { powerSpots } from './spots/powerSpots.ts';
import { shelfSpots } from './spots/shelfSpots.ts';
import { spot } from './spots/spot.ts';
import { truckSpots } from './spots/truckSpots.ts';

/** Everything but the lead ends and the meter's tips, which find their places around the rest. */
function settledSpots(observation: Observation, shelf: ShelfTab): readonly PlacedHotspot[] {
  return [
    ...powerSpots(observation),
    ...truckSpots(),
    ...plugSpots(observation),
    ...airSpots(observation, shelf),
    ...shelfSpots(observation, shelf),
    ...meterSpots(),
  ];
}

/** Where every lead end lies for this observation, clear of everything else that can be touched. */
export function placeEnds(observation: Observation, shelf: ShelfTab): ReadonlyMap<LeadEnd, PlacedEnd> {
  const taken = settledSpots(observation, shelf).filter((each) => each.enabled || each.kind === 'site');
  return placeLeadEnds(observation, shelf, taken);
}

/**
 * All hotspots of the bench for an observation and the shelf's open compartment, in bench units. Every id is present
 * once; those that cannot be used now have `enabled` false. Enabled ones are at least 36 units each way and do not overlap.
 */
export function placeHotspots(observation: Observation, shelf: ShelfTab): readonly PlacedHotspot[] {
  const placed = placeEnds(observation, shelf);
  const ends = LEAD_ENDS.flatMap((end) => {
    const at = placed.get(end);
    if (at === undefined) return [];
    const ofMeter = end === 'meter-red' || end === 'meter-black';
    const box = boxAround(at.grip, GRIP_SIZE);
    const spots = [spot(`end:${end}`, ofMeter ? 'meter' : 'tools', box, at.shown)];
    if (ofMeter) spots.push(spot(`point:${end}-tip`, 'meter', boxAround(at.tip, 36), tipIsFree(at)));
    return spots;
  });
  return [...settledSpots(observation, shelf), ...ends].map((each) =>
    isSpotThere(observation, each.id) ? each : { ...each, enabled: false },
  );
}
