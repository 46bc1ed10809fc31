import {
  AIR_SITES,
  CAVITIES,
  FITTINGS,
  type Fitting,
  LEAD_ENDS,
  type LeadPoint,
} from '../../sim/devices/places.ts';
import type { Refusal } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/** What must be true before the truck moves, by the refusal that its absence would bring. */
export const ROAD_NEEDS = [
  'key-must-be-off',
  'plug-must-be-mated',
  'tools-on-the-truck',
  'fuse-must-be-in',
  'unit-is-not-the-trucks',
] as const satisfies readonly Refusal[];
export type RoadNeed = (typeof ROAD_NEEDS)[number];

/** Each need and whether it is met, as the bench stands. The world has the last word. */
export function roadNeeds(seen: Observation): readonly { readonly need: RoadNeed; readonly met: boolean }[] {
  return ROAD_NEEDS.map((need) => ({ need, met: isMet(need, seen) }));
}

function isMet(need: RoadNeed, seen: Observation): boolean {
  switch (need) {
    case 'key-must-be-off':
      return seen.key === 'off';
    case 'plug-must-be-mated':
      return seen.plug.mated;
    case 'fuse-must-be-in':
      return seen.fuse.fitted;
    case 'unit-is-not-the-trucks':
      return seen.unit === 'truck';
    case 'tools-on-the-truck':
      return !hasTools(seen);
  }
}

const BENCH_POINTS: ReadonlySet<LeadPoint> = new Set<LeadPoint>([
  'supply-positive',
  'supply-negative',
  'meter-red-tip',
  'meter-black-tip',
]);
const TRUCK_HOSES: ReadonlySet<Fitting> = new Set<Fitting>(['canister-hose', 'air-hose', 'engine-hose']);

/** A lead, a pin, or anything but the truck's own hoses on its barbs and hose ends. */
function hasTools({ leads, plug, sites }: Observation): boolean {
  const lead = LEAD_ENDS.some((end) => {
    const point = leads[end];
    return point !== null && !BENCH_POINTS.has(point);
  });
  const pin = CAVITIES.some((cavity) => plug.pins[cavity - 1]);
  const fitting = AIR_SITES.some((site) => {
    const onIt = sites[site];
    if (onIt === null || !FITTINGS.includes(onIt)) return false;
    return isTruckSite(site) && !TRUCK_HOSES.has(onIt);
  });
  return lead || pin || fitting;
}

function isTruckSite(site: string): boolean {
  return site.endsWith('-port') || ['canister-hose-end', 'air-hose-end', 'engine-hose-end'].includes(site);
}
