import {
  type AirSite,
  type Cavity,
  type Fitting,
  type KeyPosition,
  LEAD_ENDS,
  type LeadEnd,
  type LeadPoint,
  type MeterFunction,
  type MeterJack,
  type SmokeGas,
  type UnitPort,
  type WigglePlace,
} from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { type Box, boxAround } from './geometry.ts';
import { GRIP_SIZE, type PlacedEnd, placeLeadEnds, tipIsFree } from './leadEnds.ts';
import type { LookedAt } from './lookedAt.ts';
import type { MeterKey } from './meterPlan.ts';
import type { ShelfTab } from './shelfPlan.ts';
import { airSpots } from './spots/airSpots.ts';
import { meterSpots } from './spots/meterSpots.ts';
import { plugSpots } from './spots/plugSpots.ts';
import { powerSpots } from './spots/powerSpots.ts';
import { shelfSpots } from './spots/shelfSpots.ts';
import { spot } from './spots/spot.ts';
import { truckSpots } from './spots/truckSpots.ts';

/** Things of which the bench has one: their name is their whole id. */
export type PlainHotspot =
  | 'pin-tray'
  | 'key'
  | 'fuse'
  | 'plug'
  | 'jumper-switch'
  | 'jumper-fuse'
  | 'pump-handle'
  | 'pump-release'
  | 'supply-switch'
  | 'bleed-less'
  | 'bleed-more'
  | 'manometer'
  | 'refill'
  | 'smoke-less'
  | 'smoke-more'
  | 'smoke-gauge'
  | 'eye'
  | 'ear'
  | 'drag-gauge'
  | 'reader'
  | 'gauge'
  | 'lcd';

/** Everything on the bench that a hand can touch or an eye can ask about, by name. */
export type HotspotId =
  | `point:${LeadPoint}`
  | `end:${LeadEnd}`
  | `site:${AirSite}`
  | `fitting:${Fitting}`
  | `clamp:${UnitPort}`
  | `cavity-pin:${Cavity}`
  | `key-position:${KeyPosition}`
  | `meter-selector:${MeterFunction}`
  | `meter-jack:${MeterJack}`
  | `meter-key:${MeterKey}`
  | `place:${LookedAt}`
  | `wiggle:${WigglePlace}`
  | `smoke-gas:${SmokeGas}`
  | `shelf:${ShelfTab}`
  | PlainHotspot;

/** What sort of thing a hotspot is: the part of its id before the colon. */
export type HotspotKind = HotspotId extends infer Id
  ? Id extends `${infer Kind}:${string}`
    ? Kind
    : Id
  : never;

export type HotspotGroup = 'power' | 'truck' | 'unit' | 'plug' | 'pump' | 'shelf' | 'tools' | 'meter';

/** A box in bench units. `enabled` is false while the thing cannot be reached (parted terminals of a mated plug). */
export interface PlacedHotspot extends Box {
  readonly id: HotspotId;
  readonly kind: HotspotKind;
  readonly group: HotspotGroup;
  readonly enabled: boolean;
}

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
 * once; those that cannot be used now have `enabled` false. Enabled ones are at least 34 units each way and do not overlap.
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
  return [...settledSpots(observation, shelf), ...ends];
}
