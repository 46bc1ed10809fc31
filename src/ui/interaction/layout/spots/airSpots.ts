import { AIR_SITES, FITTINGS, UNIT_PORTS, type UnitPort } from '../../../../sim/devices/places.ts';
import type { Observation } from '../../../../sim/world/Observation.ts';
import {
  BADGE_REACH,
  BARBS,
  badgeWay,
  GAUGE_CENTRE,
  GAUGE_RADIUS,
  PUMP_HANDLE_IN,
  PUMP_RELEASE,
  PUMP_TRAVEL,
} from '../benchPlan.ts';
import { type Box, boxAround, type Vec } from '../geometry.ts';
import { isPort, placeFitting, placeSite, siteIsOpen } from '../hoses.ts';
import type { HotspotGroup, PlacedHotspot } from '../PlacedHotspot.ts';
import { isTee, tabOfSite } from '../shelf.ts';
import type { ShelfTab } from '../shelfPlan.ts';
import { spot } from './spot.ts';

/** Centre of the T-handle for a travel between 0 (in) and 1 (fully drawn). */
export function pumpHandleAt(position: number): Vec {
  const travel = Math.min(1, Math.max(0, position)) * PUMP_TRAVEL;
  return { x: PUMP_HANDLE_IN.x + travel, y: PUMP_HANDLE_IN.y };
}

function pumpSpots(observation: Observation): readonly PlacedHotspot[] {
  return [
    spot('pump-handle', 'pump', boxAround(pumpHandleAt(observation.handPump.handle), 40, 50)),
    spot('pump-release', 'pump', boxAround(PUMP_RELEASE, 44, 48)),
    spot('gauge', 'pump', boxAround(GAUGE_CENTRE, GAUGE_RADIUS * 2)),
  ];
}

/** Ports, hose ends, tees, everything that goes on them, their clamps, and the hand pump. */
export function airSpots(observation: Observation, shelf: ShelfTab): readonly PlacedHotspot[] {
  const sites = AIR_SITES.map((site) => {
    const group: HotspotGroup =
      site === 'pump-hose-end' ? 'pump' : tabOfSite(site) === null ? 'unit' : 'tools';
    const box = boxAround(placeSite(site, shelf).mouth, isTee(site) ? 38 : 42);
    return spot(`site:${site}`, group, box, siteIsOpen(observation, site, shelf));
  });
  const fittings = FITTINGS.map((fitting) => {
    const { grip, site, shown } = placeFitting(observation, fitting, shelf);
    const truck = fitting === 'canister-hose' || fitting === 'air-hose' || fitting === 'engine-hose';
    const group = truck ? 'unit' : fitting === 'pump-hose' ? 'pump' : site === null ? 'tools' : groupOn(site);
    const size = fitting.endsWith('-hose') ? 42 : 40;
    return spot(
      `fitting:${fitting}`,
      group,
      boxAround(grip, site !== null && isTee(site) ? 38 : size),
      shown,
    );
  });
  const clamps = UNIT_PORTS.map((port) =>
    spot(`clamp:${port}`, 'unit', clampBox(port), observation.sites[port] !== null),
  );
  return [...sites, ...fittings, ...clamps, ...pumpSpots(observation)];
}

/** A clamp together with the badge that says how tight it is. */
function clampBox(port: UnitPort): Box {
  const { clamp } = BARBS[port];
  const way = badgeWay(port);
  const reach = BADGE_REACH + 12;
  const [dx, dy] = [way.x * reach, way.y * reach];
  const [left, top] = [Math.min(-20, dx), Math.min(-20, dy)];
  return { x: clamp.x + left, y: clamp.y + top, w: 20 - left, h: 20 - top };
}

function groupOn(site: Parameters<typeof isPort>[0]): HotspotGroup {
  return isPort(site) ? 'unit' : tabOfSite(site) === null ? 'unit' : 'tools';
}
