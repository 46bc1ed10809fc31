import { unreachable } from '../../base/assert.ts';
import type { AirSite, Cavity, Fitting, LeadEnd, LeadPoint } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/** What a hand can carry: one end of a lead, a hose, cap or plug, or a back-probe pin from the tray. */
export type Grip =
  | { readonly kind: 'lead'; readonly end: LeadEnd }
  | { readonly kind: 'fitting'; readonly item: Fitting }
  | { readonly kind: 'pin' };

/** Where it can go. The mat takes everything. */
export type Target =
  | { readonly kind: 'point'; readonly point: LeadPoint }
  | { readonly kind: 'site'; readonly site: AirSite }
  | { readonly kind: 'cavity'; readonly cavity: Cavity }
  | { readonly kind: 'mat' };

/** Where the gripped thing is now; null is the mat. */
export function placeOf(grip: Grip, seen: Observation): LeadPoint | AirSite | null {
  switch (grip.kind) {
    case 'lead':
      return seen.leads[grip.end];
    case 'fitting':
      return siteOf(grip.item, seen);
    case 'pin':
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
      return b.kind === 'pin';
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
    case 'mat':
      return b.kind === 'mat';
    default:
      return unreachable(a);
  }
}
