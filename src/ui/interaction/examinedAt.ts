import type { AirSite, ExaminedPlace, Fitting, LeadPoint } from '../../sim/devices/places.ts';
import type { HotspotName } from './HotspotMeaning.ts';
import type { HotspotId } from './layout/PlacedHotspot.ts';

/** The hotspot an eye or an ear is led to. */
export const EXAMINED_SPOTS: Readonly<Record<ExaminedPlace, HotspotId>> = {
  plug: 'plug',
  harness: 'wiggle:ground',
  unit: 'place:unit',
  'canister-hose': 'place:canister-hose',
  'air-hose': 'place:air-hose',
  'engine-hose': 'place:engine-hose',
  filter: 'place:filter',
  canister: 'place:canister',
  'filler-cap': 'place:filler-cap',
  tank: 'place:tank',
  'purge-valve': 'place:purge-valve',
  fuse: 'fuse',
  battery: 'place:battery',
  jumper: 'jumper-fuse',
};

/** The place an eye or an ear goes to when it is put on a hotspot; null where there is nothing of its own to find. */
export function examinedAt(name: HotspotName): ExaminedPlace | null {
  switch (name.kind) {
    case 'place':
      return name.of;
    case 'wiggle':
      return name.of === 'plug' ? 'plug' : 'harness';
    case 'point':
      return examinedPoint(name.of);
    case 'site':
      return examinedSite(name.of);
    case 'fitting':
      return examinedFitting(name.of);
    case 'clamp':
      return 'unit';
    case 'plug':
    case 'cavity-pin':
      return 'plug';
    case 'fuse':
      return 'fuse';
    case 'jumper-switch':
    case 'jumper-fuse':
      return 'jumper';
    case 'end':
      return name.of.startsWith('jumper') ? 'jumper' : null;
    default:
      return null;
  }
}

function examinedPoint(point: LeadPoint): ExaminedPlace | null {
  if (point.startsWith('battery')) return 'battery';
  if (point.startsWith('fuse')) return 'fuse';
  if (point.startsWith('wire') || point.startsWith('controller') || point === 'ground-splice')
    return 'harness';
  return /^(cavity|harness|unit|front|slip)-/.test(point) ? 'plug' : null;
}

function examinedSite(site: AirSite): ExaminedPlace | null {
  if (site.endsWith('-port')) return 'unit';
  return examinedFitting(site.replace('-end', '') as Fitting);
}

function examinedFitting(fitting: Fitting): ExaminedPlace | null {
  switch (fitting) {
    case 'canister-hose':
    case 'air-hose':
    case 'engine-hose':
      return fitting;
    default:
      return null;
  }
}
