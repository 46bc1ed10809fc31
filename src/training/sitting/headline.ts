import { paToInH2O, paToInHg } from '../../base/units.ts';
import type { LeadEnd, LeadPoint } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { Headline, LogEntry } from './LogEntry.ts';

/** Moves that an eye sees: half a division of the gauge, two small divisions of the water column. */
const GAUGE_MOVE_INHG = 0.5;
const COLUMN_MOVE_INH2O = 0.2;
/** Two readings nearer than this share are the same reading. */
const SAME_READING = 0.01;

const METER_ENDS: readonly LeadEnd[] = ['meter-red', 'meter-black'];

/**
 * What an entry is of. The meter comes first, unless it stands where it stood at the reading before and shows the same,
 * while a needle, a column, a click or smoke told something new; or, where nothing is new at all, unless the reading before
 * was of one of those and it still shows something: a hold is read twice. On the sense circuit it comes first all the same: in a
 * vacuum test its voltage is the finding, and staying the same is one.
 */
export function headlineOf(
  before: LogEntry | null,
  seen: Observation,
  heard: { readonly clicksOn: number; readonly clicksOff: number },
): Headline {
  if (before === null || onSense(seen) || !meterStands(before.seen, seen)) return 'meter';
  const clicked = heard.clicksOn + heard.clicksOff > 0;
  if (clicked || movedBeside(before.seen, seen)) return 'beside';
  return before.headline === 'beside' && showsBeside(seen) ? 'beside' : 'meter';
}

/** Points from which the sense circuit is read, the unit's own switch among them. */
const SENSE_POINTS: readonly (LeadPoint | null)[] = [
  'cavity-3-back',
  'controller-sense',
  'harness-3',
  'front-3',
  'wire-3',
  'unit-3',
];

function onSense({ leads }: Observation): boolean {
  return METER_ENDS.some((end) => SENSE_POINTS.includes(leads[end]));
}

function meterStands(before: Observation, now: Observation): boolean {
  if (METER_ENDS.some((end) => before.leads[end] !== now.leads[end])) return false;
  if (before.meter.function !== now.meter.function) return false;
  const was = before.meter.display;
  const is = now.meter.display;
  if (was.value === null || is.value === null) return was.digits === is.digits;
  const greater = Math.max(Math.abs(was.value), Math.abs(is.value));
  return Math.abs(was.value - is.value) <= greater * SAME_READING;
}

function showsBeside({ gauge, manometer, smoke }: Observation): boolean {
  return (
    paToInHg(gauge.needleKPa * 1000) >= GAUGE_MOVE_INHG ||
    paToInH2O((manometer.kPa ?? 0) * 1000) >= COLUMN_MOVE_INH2O ||
    smoke.gas !== 'off'
  );
}

function movedBeside(before: Observation, now: Observation): boolean {
  const gauge = Math.abs(paToInHg((now.gauge.needleKPa - before.gauge.needleKPa) * 1000));
  const column = Math.abs(paToInH2O(((now.manometer.kPa ?? 0) - (before.manometer.kPa ?? 0)) * 1000));
  return (
    gauge >= GAUGE_MOVE_INHG ||
    column >= COLUMN_MOVE_INH2O ||
    now.smoke.seenAt.join() !== before.smoke.seenAt.join() ||
    now.ledTester.lit !== before.ledTester.lit
  );
}
