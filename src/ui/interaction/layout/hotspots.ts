import {
  AIR_SITES,
  type AirSite,
  CAVITIES,
  type Cavity,
  FITTINGS,
  type Fitting,
  KEY_POSITIONS,
  type KeyPosition,
  LEAD_ENDS,
  LEAD_POINTS,
  type LeadEnd,
  type LeadPoint,
  METER_FUNCTIONS,
  type MeterFunction,
  needsPartedPlug,
  UNIT_PORTS,
  type UnitPort,
} from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import * as plan from './benchPlan.ts';
import { type Box, boxAround, type Vec } from './geometry.ts';
import { placeFitting, placeSite, siteIsOpen } from './hoses.ts';
import { GRIP_SIZE, jumperInUse, type PlacedEnd, placeLeadEnds, tipIsFree } from './leadEnds.ts';

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
  | PlainHotspot;

/** What sort of thing a hotspot is: the part of its id before the colon. */
export type HotspotKind = HotspotId extends infer Id
  ? Id extends `${infer Kind}:${string}`
    ? Kind
    : Id
  : never;

export type HotspotGroup = 'power' | 'unit' | 'plug' | 'pump' | 'tools' | 'meter';

/** A box in bench units. `enabled` is false while the thing cannot be reached (parted terminals of a mated plug). */
export interface PlacedHotspot extends Box {
  readonly id: HotspotId;
  readonly kind: HotspotKind;
  readonly group: HotspotGroup;
  readonly enabled: boolean;
}

const POINT_SIZE = 38;
const SITE_SIZE = 42;

function spot(
  id: HotspotId,
  kind: HotspotKind,
  group: HotspotGroup,
  box: Box,
  enabled: boolean = true,
): PlacedHotspot {
  return { id, kind, group, enabled, ...box };
}

function groupOfPoint(point: LeadPoint): HotspotGroup {
  if (point.startsWith('meter-')) return 'meter';
  return point.startsWith('cavity-') || needsPartedPlug(point) ? 'plug' : 'power';
}

function powerSpots(observation: Observation): readonly PlacedHotspot[] {
  const fuse = observation.fuse.fitted ? plan.FUSE_FITTED : plan.FUSE_LAID_OUT;
  return [
    spot('key', 'key', 'power', boxAround(plan.KEY_CENTRE, 76)),
    ...KEY_POSITIONS.map((position) =>
      spot(
        `key-position:${position}`,
        'key-position',
        'power',
        boxAround(plan.KEY_LABELS[position], position === 'running' ? 78 : 46, 36),
      ),
    ),
    spot('fuse', 'fuse', 'power', boxAround(fuse, 52, 44)),
  ];
}

function fixedPointSpots(observation: Observation): readonly PlacedHotspot[] {
  return LEAD_POINTS.flatMap((point) => {
    if (point === 'meter-red-tip' || point === 'meter-black-tip') return [];
    const enabled = !needsPartedPlug(point) || !observation.plug.mated;
    return [
      spot(
        `point:${point}`,
        'point',
        groupOfPoint(point),
        boxAround(plan.POINTS[point], POINT_SIZE),
        enabled,
      ),
    ];
  });
}

function plugSpots(): readonly PlacedHotspot[] {
  return [
    ...CAVITIES.map((cavity) =>
      spot(
        `cavity-pin:${cavity}`,
        'cavity-pin',
        'plug',
        boxAround({ x: plan.CAVITY_XS[cavity - 1] ?? 0, y: plan.CAVITY_Y }, 52),
      ),
    ),
    spot('plug', 'plug', 'plug', boxAround(plan.PLUG_LATCH, 70, 44)),
    spot('pin-tray', 'pin-tray', 'tools', plan.PIN_TRAY),
  ];
}

function airSpots(observation: Observation): readonly PlacedHotspot[] {
  const sites = AIR_SITES.map((site) =>
    spot(
      `site:${site}`,
      'site',
      site === 'pump-hose-end' ? 'pump' : 'unit',
      boxAround(placeSite(site).mouth, SITE_SIZE),
      siteIsOpen(observation, site),
    ),
  );
  const fittings = FITTINGS.map((fitting) => {
    const placed = placeFitting(observation, fitting);
    const loose = placed.site === null && !fitting.endsWith('-hose');
    const group = loose ? 'tools' : fitting === 'pump-hose' ? 'pump' : 'unit';
    return spot(`fitting:${fitting}`, 'fitting', group, boxAround(placed.grip, SITE_SIZE));
  });
  const clamps = UNIT_PORTS.map((port) =>
    spot(
      `clamp:${port}`,
      'clamp',
      'unit',
      boxAround(plan.BARBS[port].clamp, 40),
      observation.sites[port] !== null,
    ),
  );
  return [...sites, ...fittings, ...clamps];
}

/** Centre of the T-handle for a travel between 0 (in) and 1 (fully drawn). */
export function pumpHandleAt(position: number): Vec {
  const travel = Math.min(1, Math.max(0, position)) * plan.PUMP_TRAVEL;
  return { x: plan.PUMP_HANDLE_IN.x + travel, y: plan.PUMP_HANDLE_IN.y };
}

/** Middle of the jumper's body: in the tray, or on the mat while an end of it is in use. */
export function jumperBodyAt(observation: Observation): Vec {
  return jumperInUse(observation) ? plan.JUMPER_ON_MAT : plan.JUMPER_IN_TRAY;
}

function toolSpots(observation: Observation): readonly PlacedHotspot[] {
  const jumper = jumperBodyAt(observation);
  const onJumper = (offset: number): Box => boxAround({ x: jumper.x + offset, y: jumper.y }, 58, 40);
  return [
    spot('jumper-switch', 'jumper-switch', 'tools', onJumper(plan.JUMPER_SWITCH_OFFSET)),
    spot('jumper-fuse', 'jumper-fuse', 'tools', onJumper(plan.JUMPER_FUSE_OFFSET)),
    spot('reader', 'reader', 'tools', plan.READER),
    spot('pump-handle', 'pump-handle', 'pump', boxAround(pumpHandleAt(observation.handPump.handle), 40, 62)),
    spot('pump-release', 'pump-release', 'pump', boxAround(plan.PUMP_RELEASE, 44, 48)),
    spot('gauge', 'gauge', 'pump', boxAround(plan.GAUGE_CENTRE, plan.GAUGE_RADIUS * 2)),
  ];
}

function meterSpots(): readonly PlacedHotspot[] {
  return [
    spot('lcd', 'lcd', 'meter', plan.LCD),
    ...METER_FUNCTIONS.map((which) =>
      spot(`meter-selector:${which}`, 'meter-selector', 'meter', boxAround(plan.SELECTOR_STOPS[which], 46)),
    ),
  ];
}

/** Everything but the lead ends and the meter's tips, which find their places around the rest. */
function settledSpots(observation: Observation): readonly PlacedHotspot[] {
  return [
    ...powerSpots(observation),
    ...fixedPointSpots(observation),
    ...airSpots(observation),
    ...plugSpots(),
    ...toolSpots(observation),
    ...meterSpots(),
  ];
}

/** Where every lead end lies for this observation, clear of everything else that can be touched. */
export function placeEnds(observation: Observation): ReadonlyMap<LeadEnd, PlacedEnd> {
  const taken = settledSpots(observation).filter((each) => each.enabled || each.kind === 'site');
  return placeLeadEnds(observation, taken);
}

function groupOfEnd(end: LeadEnd): HotspotGroup {
  return end === 'meter-red' || end === 'meter-black' ? 'meter' : 'tools';
}

/**
 * All hotspots of the bench for an observation, in bench units. Every id is present once; those that cannot be used
 * now have `enabled` false. Enabled ones are at least 34 units each way and do not overlap.
 */
export function placeHotspots(observation: Observation): readonly PlacedHotspot[] {
  const placed = placeEnds(observation);
  const ends = LEAD_ENDS.flatMap((end) => {
    const at = placed.get(end);
    if (at === undefined) return [];
    const box = boxAround(at.grip, GRIP_SIZE);
    const spots = [spot(`end:${end}`, 'end', groupOfEnd(end), box)];
    if (end === 'meter-red' || end === 'meter-black') {
      const tip = boxAround(at.tip, 36);
      spots.push(spot(`point:${end}-tip`, 'point', 'meter', tip, tipIsFree(at)));
    }
    return spots;
  });
  return [...settledSpots(observation), ...ends];
}
