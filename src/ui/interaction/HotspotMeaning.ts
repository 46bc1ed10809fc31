import { unreachable } from '../../base/assert.ts';
import {
  type AirSite,
  CAVITIES,
  type Cavity,
  CLAMP_SETTINGS,
  type ClampSetting,
  cavityBack,
  cavityOfBack,
  type Fitting,
  HOSE_ENDS,
  type KeyPosition,
  LEAD_ENDS,
  type LeadEnd,
  type LeadPoint,
  type MeterFunction,
  type MeterJack,
  type SmokeGas,
  type UnitPort,
  type WigglePlace,
} from '../../sim/devices/places.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { bleedAction, meterKeyAction, smokeAction } from './controlSteps.ts';
import { EXAMINED_SPOTS, examinedAt } from './examinedAt.ts';
import { type Grip, siteOf, type Target } from './Grip.ts';
import { hoseOf } from './layout/hoses.ts';
import type { LookedAt } from './layout/lookedAt.ts';
import type { MeterKey } from './layout/meterPlan.ts';
import type { HotspotId, PlainHotspot } from './layout/PlacedHotspot.ts';
import type { ShelfTab } from './layout/shelfPlan.ts';

/** A hotspot's id taken apart. */
export type HotspotName =
  | { readonly kind: 'point'; readonly of: LeadPoint }
  | { readonly kind: 'end'; readonly of: LeadEnd }
  | { readonly kind: 'site'; readonly of: AirSite }
  | { readonly kind: 'fitting'; readonly of: Fitting }
  | { readonly kind: 'clamp'; readonly of: UnitPort }
  | { readonly kind: 'cavity-pin'; readonly of: Cavity }
  | { readonly kind: 'key-position'; readonly of: KeyPosition }
  | { readonly kind: 'meter-selector'; readonly of: MeterFunction }
  | { readonly kind: 'meter-jack'; readonly of: MeterJack }
  | { readonly kind: 'meter-key'; readonly of: MeterKey }
  | { readonly kind: 'place'; readonly of: LookedAt }
  | { readonly kind: 'wiggle'; readonly of: WigglePlace }
  | { readonly kind: 'smoke-gas'; readonly of: SmokeGas }
  | { readonly kind: 'shelf'; readonly of: ShelfTab }
  | { readonly kind: PlainHotspot };

export function nameOf(id: HotspotId): HotspotName {
  const colon = id.indexOf(':');
  if (colon < 0) return { kind: id as PlainHotspot };
  const kind = id.slice(0, colon);
  const of = id.slice(colon + 1);
  // The id's own type pairs kind and part; taking it apart loses that pairing only for the compiler.
  return { kind, of: kind === 'cavity-pin' ? Number(of) : of } as HotspotName;
}

/** What an empty hand takes up here, or null. A point with one lead on it gives that lead. */
export function gripAt(id: HotspotId, seen: Observation): Grip | null {
  const name = nameOf(id);
  switch (name.kind) {
    case 'end':
      return { kind: 'lead', end: name.of };
    case 'fitting':
      return { kind: 'fitting', item: name.of };
    case 'site': {
      // A loose hose is grasped by its end, where the eye goes first; the end of one that is on something is not there to be touched.
      const end = HOSE_ENDS.find((each) => each === name.of);
      return end === undefined || siteOf(hoseOf(end), seen) !== null || seen.sites[end] !== null
        ? null
        : { kind: 'fitting', item: hoseOf(end) };
    }
    case 'pin-tray':
      return { kind: 'pin' };
    case 'drag-gauge':
      return { kind: 'drag-gauge' };
    case 'eye':
      return { kind: 'sense', how: 'look' };
    case 'ear':
      return { kind: 'sense', how: 'listen' };
    case 'point': {
      // A hand takes a lead by its tip as well as by its handle.
      if (name.of === 'meter-red-tip') return { kind: 'lead', end: 'meter-red' };
      if (name.of === 'meter-black-tip') return { kind: 'lead', end: 'meter-black' };
      const here = LEAD_ENDS.filter((end) => seen.leads[end] === name.of);
      return here.length === 1 && here[0] !== undefined ? { kind: 'lead', end: here[0] } : null;
    }
    default:
      return null;
  }
}

/** What a full hand means by pointing here, or null. Whether it is allowed is the world's affair. */
export function targetAt(id: HotspotId, grip: Grip, seen: Observation): Target | null {
  const name = nameOf(id);
  switch (grip.kind) {
    case 'lead':
      if (name.kind === 'point') return { kind: 'point', point: name.of };
      if (name.kind === 'cavity-pin') return { kind: 'point', point: cavityBack(name.of) };
      return null;
    case 'fitting': {
      if (name.kind === 'site' || name.kind === 'clamp') return { kind: 'site', site: name.of };
      const site = name.kind === 'fitting' && name.of !== grip.item ? siteOf(name.of, seen) : null;
      return site === null ? null : { kind: 'site', site };
    }
    case 'pin': {
      const cavity =
        name.kind === 'cavity-pin' ? name.of : name.kind === 'point' ? cavityOfBack(name.of) : null;
      return cavity === null ? null : { kind: 'cavity', cavity };
    }
    case 'drag-gauge': {
      const cavity = name.kind === 'point' ? terminalOf(name.of) : null;
      return cavity === null ? null : { kind: 'cavity', cavity };
    }
    case 'sense': {
      const place = examinedAt(name);
      return place === null ? null : { kind: 'place', place };
    }
    default:
      return unreachable(grip);
  }
}

/** The cavity whose harness terminal this point is, or null. */
function terminalOf(point: LeadPoint): Cavity | null {
  return CAVITIES.find((cavity) => point === `harness-${cavity}` || point === `front-${cavity}`) ?? null;
}

/** The hotspot that shows a target for what is held. */
export function hotspotOf(target: Target, grip: Grip): HotspotId | null {
  switch (target.kind) {
    case 'point':
      return `point:${target.point}`;
    case 'site':
      return `site:${target.site}`;
    case 'cavity':
      return grip.kind === 'drag-gauge' ? `point:harness-${target.cavity}` : `cavity-pin:${target.cavity}`;
    case 'place':
      return EXAMINED_SPOTS[target.place];
    case 'mat':
      return null;
    default:
      return unreachable(target);
  }
}

/** The compartment a tab opens; null for everything else. */
export function tabAt(id: HotspotId): ShelfTab | null {
  const name = nameOf(id);
  return name.kind === 'shelf' ? name.of : null;
}

/** What pressing here does to the world; null for what is carried, read, or pulled. */
export function pressAction(id: HotspotId, seen: Observation): Action | null {
  const name = nameOf(id);
  switch (name.kind) {
    case 'clamp':
      return { kind: 'clamp', port: name.of, setting: pressedClamp(seen.clamps[name.of]) };
    case 'cavity-pin':
      return seen.plug.pins[name.of - 1]
        ? { kind: 'remove-pin', cavity: name.of }
        : { kind: 'insert-pin', cavity: name.of };
    case 'plug':
      return seen.plug.mated ? { kind: 'part-plug' } : { kind: 'mate-plug' };
    case 'fuse':
      return seen.fuse.fitted ? { kind: 'pull-fuse' } : { kind: 'fit-fuse' };
    case 'key':
      return { kind: 'set-key', position: seen.key === 'off' ? 'on' : 'off' };
    case 'key-position':
      return { kind: 'set-key', position: name.of };
    case 'meter-selector':
      return { kind: 'set-meter', function: name.of };
    case 'jumper-switch':
      return { kind: 'switch-jumper', on: !seen.jumper.switchedOn };
    case 'jumper-fuse':
      return { kind: 'renew-jumper-fuse' };
    case 'pump-release':
      return { kind: 'release', open: !seen.handPump.releaseOpen };
    case 'meter-jack':
      return { kind: 'meter-jack', jack: name.of };
    case 'meter-key':
      return meterKeyAction(name.of, seen.meter);
    case 'place':
      return { kind: 'look', at: name.of };
    case 'wiggle':
      return { kind: 'wiggle', at: name.of };
    case 'supply-switch':
      return { kind: 'switch-supply', on: !seen.supply.on };
    case 'bleed-less':
      return bleedAction(seen, -1);
    case 'bleed-more':
      return bleedAction(seen, 1);
    case 'refill':
      return { kind: 'refill-manometer' };
    case 'smoke-gas':
      return { kind: 'set-smoke', gas: name.of, pa: Math.round(seen.smoke.setKPa * 1000) };
    case 'smoke-less':
      return smokeAction(seen, -1);
    case 'smoke-more':
      return smokeAction(seen, 1);
    case 'point':
    case 'end':
    case 'site':
    case 'fitting':
    case 'pin-tray':
    case 'drag-gauge':
    case 'eye':
    case 'ear':
    case 'pump-handle':
    case 'shelf':
    case 'reader':
    case 'gauge':
    case 'manometer':
    case 'smoke-gauge':
    case 'lcd':
      return null;
    default:
      return unreachable(name);
  }
}

/** A press tightens by hand or loosens. Past hand tight, which cracks a barb, nobody comes by accident. */
function pressedClamp(setting: ClampSetting): ClampSetting {
  return setting === 'loose' ? 'hand-tight' : 'loose';
}

/** One step up or down, by `+` and `-` or by a long press; null at the end of the screw or at another control. */
export function turnAction(id: HotspotId, turn: 1 | -1, seen: Observation): Action | null {
  const name = nameOf(id);
  if (name.kind === 'bleed-less' || name.kind === 'bleed-more') return bleedAction(seen, turn);
  if (name.kind === 'smoke-less' || name.kind === 'smoke-more') return smokeAction(seen, turn);
  if (name.kind !== 'clamp') return null;
  const setting = CLAMP_SETTINGS[CLAMP_SETTINGS.indexOf(seen.clamps[name.of]) + turn];
  return setting === undefined ? null : { kind: 'clamp', port: name.of, setting };
}
