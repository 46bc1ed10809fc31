import {
  AIR_SITES,
  type AirSite,
  type Fitting,
  HOSE_ENDS,
  type HoseEnd,
  UNIT_PORTS,
  type UnitPort,
} from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { BARBS, HOSES, type HosePlan } from './benchPlan.ts';
import { along, type Vec } from './geometry.ts';
import { isTee, tabOfHose, tabOfSite } from './shelf.ts';
import { JAR_TEES_PLAN, SHELF_EDGE_Y, type ShelfTab, STOPPERS_AT_REST } from './shelfPlan.ts';

/** An air site's mouth and the way it points (away from what it belongs to). */
export interface PlacedSite {
  readonly site: AirSite;
  readonly mouth: Vec;
  readonly direction: Vec;
}

/** Where a fitting is taken hold of, and the site it is on. `shown` is false inside a closed compartment. */
export interface PlacedFitting {
  readonly fitting: Fitting;
  readonly grip: Vec;
  readonly site: AirSite | null;
  readonly shown: boolean;
}

const HOSE_OF_END: Readonly<Record<HoseEnd, Fitting>> = {
  'canister-hose-end': 'canister-hose',
  'air-hose-end': 'air-hose',
  'engine-hose-end': 'engine-hose',
  'pump-hose-end': 'pump-hose',
  'jar-hose-end': 'jar-hose',
  'manometer-hose-end': 'manometer-hose',
  'smoke-hose-end': 'smoke-hose',
};

/** The hose whose open end this is. */
export function hoseOf(end: HoseEnd): Fitting {
  return HOSE_OF_END[end];
}

/** The open end of a hose; null for caps and plugs. */
export function endOf(fitting: Fitting): HoseEnd | null {
  return HOSE_ENDS.find((end) => HOSE_OF_END[end] === fitting) ?? null;
}

export function isPort(site: AirSite): site is UnitPort {
  return (UNIT_PORTS as readonly string[]).includes(site);
}

/** The site a fitting is on, or null when it lies loose. */
export function siteOf(observation: Observation, fitting: Fitting): AirSite | null {
  return AIR_SITES.find((site) => observation.sites[site] === fitting) ?? null;
}

/** A hose end is open to the hand only while its hose is on nothing; what a closed compartment holds is not. */
export function siteIsOpen(observation: Observation, site: AirSite, shelf: ShelfTab): boolean {
  if (observation.sites[site] !== null || !siteIsShown(site, shelf)) return false;
  return isPort(site) || isTee(site) || siteOf(observation, hoseOf(site)) === null;
}

export function siteIsShown(site: AirSite, shelf: ShelfTab): boolean {
  const tab = tabOfSite(site);
  return tab === null || tab === shelf;
}

const UP: Vec = { x: 0, y: -1 };
/** A hose that goes to a tee of a closed compartment ends this far above the shelf's edge. */
const ABOVE_EDGE = 14;

export function placeSite(site: AirSite, shelf: ShelfTab): PlacedSite {
  if (isPort(site)) return { site, mouth: BARBS[site].tip, direction: BARBS[site].direction };
  if (!isTee(site)) return { site, mouth: HOSES[site].mouth, direction: HOSES[site].lies };
  const tee = JAR_TEES_PLAN[site];
  const mouth = siteIsShown(site, shelf) ? tee : { x: tee.x, y: SHELF_EDGE_Y - ABOVE_EDGE };
  return { site, mouth, direction: UP };
}

/** Where a hose starts: at its tool, or at the shelf's edge while that stands in a closed compartment. */
export function hosePlan(end: HoseEnd, shelf: ShelfTab): HosePlan {
  const tab = tabOfHose(end);
  const plan = HOSES[end];
  return tab === null || tab === shelf ? plan : { ...plan, root: { x: plan.root.x, y: SHELF_EDGE_Y } };
}

/** False while a hose lies wholly inside closed compartments. */
export function hoseIsShown(observation: Observation, end: HoseEnd, shelf: ShelfTab): boolean {
  const tab = tabOfHose(end);
  if (tab === null || tab === shelf) return true;
  const site = siteOf(observation, hoseOf(end));
  return site !== null && siteIsShown(site, shelf);
}

/** The grip of a loose hose lies this far behind its mouth. */
const GRIP_BEHIND = 52;

export function placeFitting(observation: Observation, fitting: Fitting, shelf: ShelfTab): PlacedFitting {
  const site = siteOf(observation, fitting);
  const end = endOf(fitting);
  if (site !== null) {
    const shown = end === null ? siteIsShown(site, shelf) : hoseIsShown(observation, end, shelf);
    return { fitting, site, grip: placeSite(site, shelf).mouth, shown };
  }
  if (end !== null) {
    const { mouth, lies } = HOSES[end];
    const shown = hoseIsShown(observation, end, shelf);
    return { fitting, site: null, grip: along(mouth, lies, -GRIP_BEHIND), shown };
  }
  const rest = STOPPERS_AT_REST[fitting as keyof typeof STOPPERS_AT_REST];
  return { fitting, site: null, grip: rest, shown: true };
}
