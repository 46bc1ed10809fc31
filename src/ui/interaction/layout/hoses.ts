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
import { BARBS, HOSES, TRAY_FITTINGS } from './benchPlan.ts';
import { along, type Vec } from './geometry.ts';

/** An air site's mouth and the way it points (away from what it belongs to). */
export interface PlacedSite {
  readonly site: AirSite;
  readonly mouth: Vec;
  readonly direction: Vec;
}

/** Where a fitting is taken hold of, and the site it is on. */
export interface PlacedFitting {
  readonly fitting: Fitting;
  readonly grip: Vec;
  readonly site: AirSite | null;
}

const HOSE_OF_END: Readonly<Record<HoseEnd, Fitting>> = {
  'canister-hose-end': 'canister-hose',
  'air-hose-end': 'air-hose',
  'engine-hose-end': 'engine-hose',
  'pump-hose-end': 'pump-hose',
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

/** A hose end is open to the hand only while its hose is on nothing. */
export function siteIsOpen(observation: Observation, site: AirSite): boolean {
  if (observation.sites[site] !== null) return false;
  return isPort(site) || siteOf(observation, hoseOf(site)) === null;
}

export function placeSite(site: AirSite): PlacedSite {
  if (isPort(site)) return { site, mouth: BARBS[site].tip, direction: BARBS[site].direction };
  return { site, mouth: HOSES[site].mouth, direction: HOSES[site].lies };
}

/** The grip of a loose hose lies this far behind its mouth. */
const GRIP_BEHIND = 52;

export function placeFitting(observation: Observation, fitting: Fitting): PlacedFitting {
  const site = siteOf(observation, fitting);
  if (site !== null) return { fitting, site, grip: placeSite(site).mouth };
  const end = endOf(fitting);
  if (end !== null) {
    const { mouth, lies } = HOSES[end];
    return { fitting, site: null, grip: along(mouth, lies, -GRIP_BEHIND) };
  }
  switch (fitting) {
    case 'cap-a':
    case 'cap-b':
    case 'plug-a':
    case 'plug-b':
      return { fitting, site: null, grip: TRAY_FITTINGS[fitting] };
    default:
      return { fitting, site: null, grip: { x: 0, y: 0 } };
  }
}
