import { unreachable } from '../../base/assert.ts';
import type {
  AirSite,
  Cavity,
  ExaminedPlace,
  Fitting,
  LeadEnd,
  LeadPoint,
} from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/**
 * What a hand can carry: one end of a lead, a hose, cap or plug, a back-probe pin from the tray, the pin-drag gauge; and
 * an eye or an ear that goes to a place.
 */
export type Grip =
  | { readonly kind: 'lead'; readonly end: LeadEnd }
  | { readonly kind: 'fitting'; readonly item: Fitting }
  | { readonly kind: 'pin' }
  | { readonly kind: 'drag-gauge' }
  | { readonly kind: 'sense'; readonly how: 'look' | 'listen' };

/** Where it can go. The mat takes everything. */
export type Target =
  | { readonly kind: 'point'; readonly point: LeadPoint }
  | { readonly kind: 'site'; readonly site: AirSite }
  | { readonly kind: 'cavity'; readonly cavity: Cavity }
  | { readonly kind: 'place'; readonly place: ExaminedPlace }
  | { readonly kind: 'mat' };

/** Where the gripped thing is now; null is the mat. */
export function placeOf(grip: Grip, seen: Observation): LeadPoint | AirSite | null {
  switch (grip.kind) {
    case 'lead':
      return seen.leads[grip.end];
    case 'fitting':
      return siteOf(grip.item, seen);
    case 'pin':
    case 'drag-gauge':
    case 'sense':
      return null;
    default:
      return unreachable(grip);
  }
}

/** The site a fitting is on; null when it lies on the mat. */
export function siteOf(item: Fitting, seen: Observation): AirSite | null {
  const found = Object.entries(seen.sites).find(([, fitting]) => fitting === item);
  return found === undefined ? null : (found[0] as AirSite);
}

export function sameGrip(a: Grip | null, b: Grip | null): boolean {
  if (a === null || b === null) return a === b;
  switch (a.kind) {
    case 'lead':
      return b.kind === 'lead' && a.end === b.end;
    case 'fitting':
      return b.kind === 'fitting' && a.item === b.item;
    case 'pin':
    case 'drag-gauge':
      return b.kind === a.kind;
    case 'sense':
      return b.kind === 'sense' && a.how === b.how;
    default:
      return unreachable(a);
  }
}

export function sameTarget(a: Target, b: Target): boolean {
  switch (a.kind) {
    case 'point':
      return b.kind === 'point' && a.point === b.point;
    case 'site':
      return b.kind === 'site' && a.site === b.site;
    case 'cavity':
      return b.kind === 'cavity' && a.cavity === b.cavity;
    case 'place':
      return b.kind === 'place' && a.place === b.place;
    case 'mat':
      return b.kind === 'mat';
    default:
      return unreachable(a);
  }
}

/** Eyes, ears and the pin-drag gauge stay in the hand after use: one goes from place to place with them. */
export function staysInHand(grip: Grip): boolean {
  return grip.kind === 'sense' || grip.kind === 'drag-gauge';
}
