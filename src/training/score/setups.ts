import { paToInHg } from '../../base/units.ts';
import {
  type AirSite,
  type Fitting,
  JAR_TEES,
  type LeadPoint,
  type MeterFunction,
} from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { LogEntry } from '../sitting/LogEntry.ts';

/** Ways of connecting the instruments, as the rules know them. All are read off what an eye could see. */

const GROUNDS: readonly LeadPoint[] = ['battery-negative', 'chassis-stud', 'ground-splice'];
const SENSE_POINTS: readonly LeadPoint[] = [
  'cavity-3-back',
  'controller-sense',
  'harness-3',
  'front-3',
  'wire-3',
];
const CAPS: readonly (Fitting | null)[] = ['cap-a', 'cap-b', 'cap-c'];
const PLUGS: readonly (Fitting | null)[] = ['plug-a', 'plug-b', 'plug-c'];

export const inHgOf = (kPa: number): number => paToInHg(kPa * 1000);

/** Both meter tips on something, as an unordered pair; null when one is loose. */
export function metered(seen: Observation): readonly [LeadPoint, LeadPoint] | null {
  const { 'meter-red': red, 'meter-black': black } = seen.leads;
  return red === null || black === null ? null : [red, black];
}

/** True when one tip is on a point of the first list and the other on one of the second. */
export function across(seen: Observation, some: readonly LeadPoint[], others: readonly LeadPoint[]): boolean {
  const pair = metered(seen);
  if (pair === null) return false;
  const [a, b] = pair;
  return (some.includes(a) && others.includes(b)) || (some.includes(b) && others.includes(a));
}

/** The meter reads resistance. */
export function onOhms(seen: Observation): boolean {
  return seen.meter.function === 'ohms' || seen.meter.function === 'continuity';
}

/** The meter drives a current of its own into what it is on: ohms, continuity and diode. */
export function drivesCurrent(seen: Observation): boolean {
  return onOhms(seen) || seen.meter.function === 'diode';
}

/** The digits are of this moment: not held, not the end of a recording, not counted from another zero. */
export function readsNow({ meter }: Observation): boolean {
  return !meter.hold && meter.extremes !== 'low' && meter.extremes !== 'high' && !meter.relative;
}

/** A tip of the meter is on the other: what it reads then is its own leads. */
export function tipsTogether(seen: Observation): boolean {
  const { 'meter-red': red, 'meter-black': black } = seen.leads;
  return red === 'meter-black-tip' || black === 'meter-red-tip';
}

/** The meter is connected to see the vacuum switch: volts on the sense wire, or ohms through the parted unit. */
export function watchesSense(seen: Observation): boolean {
  if (seen.meter.function === 'volts-dc') {
    return seen.key !== 'off' && across(seen, SENSE_POINTS, [...GROUNDS, 'cavity-2-back', 'harness-2']);
  }
  return onOhms(seen) && across(seen, ['unit-3'], ['unit-2']);
}

/**
 * What the meter says of the switch: the controller's own thresholds (2 and 6 V), or through the parted unit a
 * continuity against an open. Null when the meter is not on it or still moving.
 */
export function senseReading(seen: Observation): 'open' | 'closed' | 'between' | null {
  const { display } = seen.meter;
  if (!watchesSense(seen) || !display.settled || !readsNow(seen)) return null;
  if (onOhms(seen)) {
    if (display.digits.includes('OL')) return 'open';
    return display.value !== null && display.value < 20 ? 'closed' : 'between';
  }
  if (display.value === null) return null;
  const volts = Math.abs(display.value);
  return volts < 2 ? 'closed' : volts > 6 ? 'open' : 'between';
}

/** What the reader says of the switch; null while it is asleep. */
export function readerSense({ reader }: Observation): 'open' | 'closed' | 'between' | null {
  switch (reader.senseState) {
    case 'open':
    case 'closed':
      return reader.senseState;
    case 'implausible':
      return 'between';
    case 'high':
    case null:
      return null;
  }
}

/** Functions of the meter that read the volts of a source. */
const VOLTS: readonly MeterFunction[] = ['volts-dc', 'volts-low-z'];

/** The meter's tips are on a known source, whatever it shows. */
export function onKnownSource(seen: Observation): boolean {
  return (
    across(seen, ['supply-positive'], ['supply-negative']) ||
    across(seen, ['battery-positive'], ['battery-negative'])
  );
}

/** A settled reading of a known source: the battery itself, or the bench's 12 V supply. */
export function showsKnownSource(seen: Observation): boolean {
  if (!VOLTS.includes(seen.meter.function) || !seen.meter.display.settled || !readsNow(seen)) return false;
  const volts = Math.abs(seen.meter.display.value ?? 0);
  if (across(seen, ['supply-positive'], ['supply-negative']))
    return seen.supply.on && volts > 11 && volts < 13;
  return across(seen, ['battery-positive'], ['battery-negative']) && volts > 9 && volts < 16;
}

/** The solenoid is really carrying its current: commanded on through the mated plug. */
export function isLoaded(seen: Observation): boolean {
  return seen.plug.mated && seen.reader.driver === 'on';
}

/** A settled reading of the feed, and one of the ground side, at the plug. */
export function readsFeed(seen: Observation): boolean {
  return readsVolts(
    seen,
    ['cavity-1-back', 'harness-1', 'front-1', 'wire-1'],
    [...GROUNDS, 'battery-positive', 'fuse-in', 'fuse-out', 'controller-feed', 'cavity-2-back'],
  );
}
export function readsGround(seen: Observation): boolean {
  return readsVolts(
    seen,
    ['cavity-2-back', 'harness-2', 'front-2', 'wire-2'],
    [...GROUNDS, 'battery-positive'],
  );
}

function readsVolts(seen: Observation, points: readonly LeadPoint[], against: readonly LeadPoint[]): boolean {
  const { display, function: which } = seen.meter;
  return which === 'volts-dc' && display.settled && readsNow(seen) && across(seen, points, against);
}

/** The tool's hose is on this site, by itself or through the jar. */
export function toolOn(
  seen: Observation,
  tool: 'pump-hose' | 'manometer-hose' | 'smoke-hose',
  site: AirSite,
): boolean {
  const on = seen.sites[site];
  if (on === tool) return true;
  return on === 'jar-hose' && JAR_TEES.some((tee) => seen.sites[tee] === tool);
}

/** The hand pump draws where vacuum works the switch. */
export function pumpOnUnit(seen: Observation): boolean {
  return toolOn(seen, 'pump-hose', seen.surface.switchPort);
}

/** The jumper and the plain ground lead feed the coil between the terminals of the parted unit, either way round. */
export function coilFed(seen: Observation): boolean {
  const fed = jumperFeeds(seen);
  const grounded = plainLeadFrom(seen, [
    'battery-negative',
    'chassis-stud',
    'ground-splice',
    'supply-negative',
  ]);
  return (fed === 'unit-1' && grounded === 'unit-2') || (fed === 'unit-2' && grounded === 'unit-1');
}

/** Whatever must be capped for the switch's side to hold is. */
export function airCapped({ sites, surface }: Observation): boolean {
  return surface.cappedForHold.every((port) => CAPS.includes(sites[port]));
}

/** A plug is in the pump's own cone. */
export function pumpPlugged(seen: Observation): boolean {
  return PLUGS.includes(seen.sites['pump-hose-end']);
}

/** A hose that is on nothing. */
export function isOff(seen: Observation, fitting: Fitting): boolean {
  return !Object.values(seen.sites).includes(fitting);
}

/** The rig hangs on a vapour line. */
export function hasVapourLine({ surface }: Observation): boolean {
  return surface.fittings.includes('canister-hose');
}

/** The vapour line to the canister stands open: its hose is off and nothing is in its end. */
export function canisterLineOpen(seen: Observation): boolean {
  return hasVapourLine(seen) && isOff(seen, 'canister-hose') && seen.sites['canister-hose-end'] === null;
}

/** The jumper carries battery voltage to its far end. */
export function jumperFeeds(seen: Observation): LeadPoint | null {
  const { 'jumper-supply': supply, 'jumper-far': far } = seen.leads;
  const fromSource =
    supply === 'battery-positive' ||
    supply === 'fuse-in' ||
    supply === 'fuse-out' ||
    (supply === 'supply-positive' && seen.supply.on);
  return seen.jumper.switchedOn && seen.jumper.fuse === 'whole' && fromSource ? far : null;
}

/** Where the plain lead joins this point to, or null. */
export function plainLeadFrom(seen: Observation, points: readonly LeadPoint[]): LeadPoint | null {
  const { 'plain-a': a, 'plain-b': b } = seen.leads;
  if (a === null || b === null) return null;
  if (points.includes(a)) return b;
  return points.includes(b) ? a : null;
}

/** Ids of the entries for which the test holds. */
export function entriesWhere(
  log: readonly LogEntry[],
  test: (entry: LogEntry) => boolean,
): readonly number[] {
  return log.filter(test).map(({ id }) => id);
}
