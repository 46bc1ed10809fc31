import { unreachable } from '../../base/assert.ts';
import {
  AIR_SITES,
  type AirSite,
  CAVITIES,
  cavityOfBack,
  EXAMINED_PLACES,
  type ExaminedPlace,
  FITTINGS,
  type Fitting,
  HOSE_ENDS,
  LEAD_POINTS,
  type LeadEnd,
  type LeadPoint,
  mayFit,
  needsPartedPlug,
} from '../../sim/devices/places.ts';
import type { Refusal } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { type Grip, placeOf, siteOf, type Target } from './Grip.ts';
import { isSpotThere, isThere } from './toolOfSpot.ts';

/** Headings under which places are listed, in the order of the job. */
export type PlaceGroup = 'power' | 'plug' | 'unit' | 'hoses' | 'truck' | 'controller' | 'leads' | 'mat';
export const PLACE_GROUPS: readonly PlaceGroup[] = [
  'power',
  'plug',
  'unit',
  'hoses',
  'truck',
  'controller',
  'leads',
  'mat',
];

/** One place a held thing could go, and why not yet when it cannot. */
export interface Offer {
  readonly target: Target;
  readonly group: PlaceGroup;
  readonly refusal: Refusal | null;
}

/** All places the held thing fits by its kind, in the order of the job. The place it is at now is left out. */
export function offersFor(grip: Grip, seen: Observation): readonly Offer[] {
  const now = placeOf(grip, seen);
  const offers = placeOffers(grip, now, seen);
  const mat: Offer[] = now === null ? [] : [{ target: { kind: 'mat' }, group: 'mat', refusal: null }];
  const all = [...offers, ...mat];
  const there = all.filter(({ target }) => isTargetThere(target, seen));
  return PLACE_GROUPS.flatMap((group) => there.filter((offer) => offer.group === group));
}

function isTargetThere(target: Target, seen: Observation): boolean {
  switch (target.kind) {
    case 'point':
      return isSpotThere(seen, `point:${target.point}`);
    case 'site':
      return isSpotThere(seen, `site:${target.site}`);
    case 'place':
      return (
        seen.surface.examined.includes(target.place) && (target.place !== 'jumper' || isThere(seen, 'jumper'))
      );
    default:
      return true;
  }
}

/** The places among `offersFor` that can be used now. */
export function legalTargets(grip: Grip, seen: Observation): readonly Target[] {
  return offersFor(grip, seen)
    .filter((offer) => offer.refusal === null)
    .map((offer) => offer.target);
}

function placeOffers(grip: Grip, now: unknown, seen: Observation): Offer[] {
  switch (grip.kind) {
    case 'lead':
      return pointOffers(grip.end, now, seen);
    case 'fitting':
      return siteOffers(grip.item, now, seen);
    case 'pin':
      return CAVITIES.map((cavity) => ({
        target: { kind: 'cavity', cavity },
        group: 'plug',
        refusal: seen.plug.pins[cavity - 1] ? 'pin-already-in' : null,
      }));
    case 'drag-gauge':
      return CAVITIES.map((cavity) => ({
        target: { kind: 'cavity', cavity },
        group: 'plug',
        refusal: seen.plug.mated ? 'plug-must-be-parted' : null,
      }));
    case 'sense':
      return EXAMINED_PLACES.map((place) => ({
        target: { kind: 'place', place },
        group: groupOfPlace(place),
        refusal: null,
      }));
    default:
      return unreachable(grip);
  }
}

function groupOfPlace(place: ExaminedPlace): PlaceGroup {
  switch (place) {
    case 'battery':
    case 'fuse':
      return 'power';
    case 'plug':
    case 'harness':
      return 'plug';
    case 'unit':
      return 'unit';
    case 'canister-hose':
    case 'air-hose':
    case 'engine-hose':
      return 'hoses';
    case 'filter':
    case 'canister':
    case 'filler-cap':
    case 'tank':
    case 'purge-valve':
      return 'truck';
    case 'jumper':
      return 'leads';
  }
}

function pointOffers(end: LeadEnd, now: unknown, seen: Observation): Offer[] {
  return LEAD_POINTS.filter((point) => point !== now && !isOwnTip(end, point)).map((point) => ({
    target: { kind: 'point', point },
    group: groupOfPoint(point),
    refusal: refusalOfPoint(point, seen),
  }));
}

function siteOffers(item: Fitting, now: unknown, seen: Observation): Offer[] {
  return AIR_SITES.filter((site) => site !== now && mayFit(item, site)).map((site) => ({
    target: { kind: 'site', site },
    group: site.endsWith('-port') ? 'unit' : 'hoses',
    refusal: refusalOfSite(item, site, seen),
  }));
}

/** A place is taken by what is on it; a hose's end also while its hose is on something, or has something in it itself. */
function refusalOfSite(item: Fitting, site: AirSite, seen: Observation): Refusal | null {
  const ownEnd = HOSE_ENDS.find((end) => end === `${item}-end`);
  const hoseHere = FITTINGS.find((fitting) => `${fitting}-end` === site);
  if (seen.sites[site] !== null) return 'site-taken';
  if (ownEnd !== undefined && seen.sites[ownEnd] !== null) return 'site-taken';
  return hoseHere !== undefined && siteOf(hoseHere, seen) !== null ? 'site-taken' : null;
}

function refusalOfPoint(point: LeadPoint, seen: Observation): Refusal | null {
  if (needsPartedPlug(point) && seen.plug.mated) return 'point-needs-parted-plug';
  const cavity = cavityOfBack(point);
  if (cavity !== null && seen.plug.pins[cavity - 1] !== true) return 'point-needs-pin';
  return null;
}

function isOwnTip(end: LeadEnd, point: LeadPoint): boolean {
  return (
    (end === 'meter-red' && point === 'meter-red-tip') ||
    (end === 'meter-black' && point === 'meter-black-tip')
  );
}

export function groupOfPoint(point: LeadPoint): PlaceGroup {
  switch (point) {
    case 'battery-positive':
    case 'battery-negative':
    case 'fuse-in':
    case 'fuse-out':
    case 'chassis-stud':
    case 'ground-splice':
    case 'supply-positive':
    case 'supply-negative':
      return 'power';
    case 'controller-feed':
    case 'controller-sense':
      return 'controller';
    case 'cavity-1-back':
    case 'cavity-2-back':
    case 'cavity-3-back':
    case 'harness-1':
    case 'harness-2':
    case 'harness-3':
    case 'unit-1':
    case 'unit-2':
    case 'unit-3':
    case 'front-1':
    case 'front-2':
    case 'front-3':
    case 'wire-1':
    case 'wire-2':
    case 'wire-3':
    case 'slip-1-2':
    case 'slip-2-3':
      return 'plug';
    case 'meter-red-tip':
    case 'meter-black-tip':
      return 'leads';
    default:
      return unreachable(point);
  }
}
