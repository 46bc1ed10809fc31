import {
  AIR_SITES,
  type AirSite,
  LEAD_POINTS,
  type LeadPoint,
  SMOKE_PLACES,
  type SmokePlace,
  WIGGLE_PLACES,
  type WigglePlace,
} from '../../../sim/devices/places.ts';
import type { Happening, HappeningPlace, Observation } from '../../../sim/world/Observation.ts';
import {
  FUSE_FITTED,
  GAUGE_CENTRE,
  GAUGE_RADIUS,
  PUMP_RELEASE,
  UNIT_BODY,
  UNIT_CONNECTOR,
} from '../../interaction/layout/benchPlan.ts';
import {
  along,
  type Box,
  boxAround,
  centreOf,
  overlap,
  SHEET,
  shared,
  type Vec,
} from '../../interaction/layout/geometry.ts';
import { placeSite, siteIsShown } from '../../interaction/layout/hoses.ts';
import type { PlacedEnd } from '../../interaction/layout/leadEnds.ts';
import { JACKS, LCD, METER } from '../../interaction/layout/meterPlan.ts';
import { POINTS } from '../../interaction/layout/points.ts';
import {
  LENS,
  SHELF_EDGE_Y,
  type ShelfTab,
  SMOKE_GAUGE,
  SMOKE_GAUGE_RADIUS,
} from '../../interaction/layout/shelfPlan.ts';
import { jumperBodyAt } from '../../interaction/layout/spots/shelfSpots.ts';
import { WIGGLE_BOXES } from '../../interaction/layout/spots/truckSpots.ts';
import { smokeAt, smokeWord } from './smokePuffs.ts';

type Ends = ReadonlyMap<string, PlacedEnd>;

const DIAL = boxAround(GAUGE_CENTRE, 2 * GAUGE_RADIUS, 2 * GAUGE_RADIUS);
const SMOKE_DIAL = boxAround(SMOKE_GAUGE, 2 * SMOKE_GAUGE_RADIUS, 2 * SMOKE_GAUGE_RADIUS);
const UP: Vec = { x: 0, y: -1 };
const DOWN: Vec = { x: 0, y: 1 };
const OVER_UNIT: Vec = { x: UNIT_BODY.x + UNIT_BODY.w / 2, y: UNIT_BODY.y + 72 };

function isOneOf<One extends string>(names: readonly One[], at: string): at is One {
  return (names as readonly string[]).includes(at);
}

function pointAt(point: LeadPoint, ends: Ends): Vec {
  if (point === 'meter-red-tip') return ends.get('meter-red')?.tip ?? OVER_UNIT;
  if (point === 'meter-black-tip') return ends.get('meter-black')?.tip ?? OVER_UNIT;
  return POINTS[point];
}

/** Beside the mouth, not over it; over the shelf's edge while its compartment is closed. */
function siteAt(site: AirSite, shelf: ShelfTab): Vec {
  const { mouth } = placeSite(site, shelf);
  return siteIsShown(site, shelf) ? along(mouth, DOWN, 34) : { x: mouth.x, y: SHELF_EDGE_Y - 18 };
}

/** Where the caption of something heard or seen stands: where it came from, as far as eye and ear can tell. */
function placeOf(
  at: HappeningPlace,
  kind: Happening['kind'],
  seen: Observation,
  shelf: ShelfTab,
  ends: Ends,
): Vec {
  // Smoke has its own word over each puff.
  if (kind === 'smoke-seen' && isOneOf<SmokePlace>(SMOKE_PLACES, at))
    return centreOf(smokeWord(smokeAt(at, seen, shelf)));
  if (isOneOf<LeadPoint>(LEAD_POINTS, at)) return along(pointAt(at, ends), UP, 40);
  if (isOneOf<AirSite>(AIR_SITES, at)) return siteAt(at, shelf);
  if (isOneOf<WigglePlace>(WIGGLE_PLACES, at))
    return at === 'plug'
      ? along(centreOf(UNIT_CONNECTOR), UP, 60)
      : along(centreOf(WIGGLE_BOXES[at]), UP, 36);
  switch (at) {
    case 'unit':
      return OVER_UNIT;
    case 'dash':
      return { x: 599, y: 122 };
    case 'fuse':
      return along(FUSE_FITTED, DOWN, 52);
    case 'jumper':
      return along(jumperBodyAt(seen), UP, 36);
    case 'manometer':
      return { x: centreOf(LENS).x, y: SHELF_EDGE_Y - 18 };
    case 'meter':
      return { x: centreOf(LCD).x, y: METER.y - 18 };
    case 'milliamps-jack':
      return along(JACKS.milliamps, UP, 54);
    case 'amps-jack':
      return along(JACKS.amps, UP, 54);
    case 'pump':
      return along(PUMP_RELEASE, UP, 44);
    default:
      return along(smokeAt(at, seen, shelf), DOWN, 30);
  }
}

/**
 * The same, in sight and clear of whatever is read; over the unit where the place could not be told. What sounds out of sight has its
 * word at the edge nearest to it.
 */
export function happeningAt(
  { at, kind }: Happening,
  seen: Observation,
  shelf: ShelfTab,
  ends: Ends,
  window: Box = SHEET,
): Vec {
  const { x, y } = at === null ? OVER_UNIT : placeOf(at, kind, seen, shelf, ends);
  const room = shared(window, SHEET);
  const kept = {
    x: Math.min(room.x + room.w - 44, Math.max(room.x + 44, x)),
    y: Math.min(room.y + room.h - 18, Math.max(room.y + 18, y)),
  };
  const covers = (box: Box): boolean => overlap(boxAround(kept, 90, 32), box);
  if (covers(LCD)) return { x: kept.x, y: Math.max(room.y + 18, LCD.y - 18) };
  if (covers(DIAL)) return { x: DIAL.x + DIAL.w + 46, y: kept.y };
  // An instrument of the shelf is read while its compartment stands open.
  if (shelf === 'air' ? covers(LENS) : shelf === 'smoke' && covers(SMOKE_DIAL))
    return { x: kept.x, y: SHELF_EDGE_Y - 18 };
  return kept;
}
