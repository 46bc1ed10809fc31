import type { AirSite, Fitting, HoseEnd, JarTee } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import type { Target } from '../Grip.ts';
import { jumperInUse } from './leadEnds.ts';
import { JAR_TEES_PLAN, type ShelfTab } from './shelfPlan.ts';

/** The compartment a hose's tool stands in; null for the truck's own hoses and the hand pump, which lie open. */
export function tabOfHose(end: HoseEnd): ShelfTab | null {
  switch (end) {
    case 'jar-hose-end':
    case 'manometer-hose-end':
      return 'air';
    case 'smoke-hose-end':
      return 'smoke';
    default:
      return null;
  }
}

export function isTee(site: AirSite): site is JarTee {
  return site in JAR_TEES_PLAN;
}

/** The compartment an air site stands in; null when it is always in sight. */
export function tabOfSite(site: AirSite): ShelfTab | null {
  if (isTee(site)) return 'air';
  return site.endsWith('-hose-end') ? tabOfHose(site as HoseEnd) : null;
}

/** The closed compartment a place lies in, or null while it is in sight. */
export function hiddenIn(target: Target, seen: Observation, shelf: ShelfTab): ShelfTab | null {
  const tab =
    target.kind === 'site'
      ? tabOfSite(target.site)
      : target.kind === 'place' && target.place === 'jumper' && !jumperInUse(seen)
        ? 'leads'
        : null;
  return tab === shelf ? null : tab;
}

/** True when a compartment's tools are in use: its tab then says so while it is closed. */
export function tabInUse(tab: ShelfTab, seen: Observation): boolean {
  switch (tab) {
    case 'leads':
      return Object.entries(seen.leads).some(([end, point]) => point !== null && !end.startsWith('meter-'));
    case 'air':
      return on('jar-hose', seen) || on('manometer-hose', seen) || seen.sites['jar-tee-a'] !== null;
    case 'smoke':
      return on('smoke-hose', seen) || seen.smoke.gas !== 'off';
    case 'hands':
      return false;
  }
}

function on(fitting: Fitting, seen: Observation): boolean {
  return Object.values(seen.sites).includes(fitting);
}
