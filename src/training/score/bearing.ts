import { unreachable } from '../../base/assert.ts';
import { paToInH2O } from '../../base/units.ts';
import type { MeterFunction } from '../../sim/devices/places.ts';
import { faultById } from '../../sim/faults/catalogue.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { LogEntry } from '../sitting/LogEntry.ts';
import { replay } from '../sitting/replay.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import { theWorld } from '../sitting/worldMaker.ts';
import { entriesWhere, inHgOf, isLoaded, metered, watchesSense } from './setups.ts';
import type { Timeline } from './Timeline.ts';

/**
 * Cited entries that bear on the verdict: readings that would have been others, had the named item been good. Found by
 * doing the same actions once more, under the same tolerances, on a bench where that item's faults are taken away. A
 * reading that a good item would have given just as well says nothing against it, however well it was taken.
 * Where the verdict is that nothing is wrong there is no such bench; then readings of the unit at work bear on it.
 */
export function bearingEntries(
  timeline: Timeline,
  scenario: Scenario,
  record: SittingRecord,
): readonly number[] {
  const { verdict, log } = timeline;
  const cited = log.filter(({ id }) => verdict.cites.includes(id));
  if (verdict.item === 'nothing-wrong') {
    return entriesWhere(
      cited,
      ({ seen, heard }) => watchesSense(seen) || heard.clicksOn > 0 || isLoaded(seen),
    );
  }
  const cured = scenario.faults.filter(({ fault }) => faultById(fault)?.item !== verdict.item);
  if (cured.length === scenario.faults.length) return [];
  const good = replay(
    scenario,
    { ...record, actions: record.actions.filter(({ tick }) => tick <= verdict.tick), endTick: verdict.tick },
    { onRefusal: 'skip' },
    (spec) => theWorld({ ...spec, faults: cured }),
  );
  if (!good.ok) return [];
  const other = new Map(good.value.view().log.map((entry) => [entry.id, entry]));
  return entriesWhere(cited, (entry) => {
    const onGood = other.get(entry.id);
    return onGood !== undefined && differs(entry, onGood);
  });
}

/** Share of the larger reading, and floors in volts, ohms and inHg, under which two readings count as the same. */
const SAME_SHARE = 0.05;
const SAME_VOLTS = 0.05;
const SAME_OHMS = 1;
const SAME_AMPS = 0.005;
const SAME_READING: Readonly<Record<MeterFunction, number>> = {
  off: 0,
  'volts-dc': SAME_VOLTS,
  'volts-ac': SAME_VOLTS,
  'volts-low-z': SAME_VOLTS,
  diode: SAME_VOLTS,
  ohms: SAME_OHMS,
  continuity: SAME_OHMS,
  'milliamps-dc': SAME_AMPS,
  'amps-dc': SAME_AMPS,
};
const SAME_INHG = 0.6;
/** Brightness of the test lamp, and inches of water, under which two sights count as the same. */
const SAME_GLOW = 0.1;
const SAME_INH2O = 0.4;

function differs(a: LogEntry, b: LogEntry): boolean {
  if (a.heard.clicksOn !== b.heard.clicksOn || a.heard.clicksOff !== b.heard.clicksOff) return true;
  if (apart(inHgOf(a.seen.gauge.needleKPa), inHgOf(b.seen.gauge.needleKPa), SAME_INHG)) return true;
  if (apart(inHgOf(a.gaugeSwing.highKPa), inHgOf(b.gaugeSwing.highKPa), SAME_INHG)) return true;
  if (apart(inHgOf(a.gaugeSwing.lowKPa), inHgOf(b.gaugeSwing.lowKPa), SAME_INHG)) return true;
  if (a.seen.fuse.element !== b.seen.fuse.element) return true;
  if (toolsDiffer(a.seen, b.seen) || writtenDiffers(a, b)) return true;
  return meterDiffers(a, b);
}

/** What the other instruments showed. */
function toolsDiffer(a: Observation, b: Observation): boolean {
  if (Math.abs(a.testLamp.glow - b.testLamp.glow) > SAME_GLOW) return true;
  if (a.ledTester.lit !== b.ledTester.lit) return true;
  if (a.smoke.seenAt.join() !== b.smoke.seenAt.join()) return true;
  const [one, two] = [a.manometer.kPa, b.manometer.kPa];
  if (one === null || two === null) return one !== two;
  return apart(paToInH2O(one * 1000), paToInH2O(two * 1000), SAME_INH2O);
}

/** What entries that wrote themselves down say. */
function writtenDiffers(a: LogEntry, b: LogEntry): boolean {
  switch (a.about) {
    case 'reading':
      return false;
    case 'codes':
      return codesOf(a) !== codesOf(b);
    case 'finding':
      return a.seen.findings.at(-1)?.signs.join() !== b.seen.findings.at(-1)?.signs.join();
    case 'drive':
      return outcomesOf(a) !== outcomesOf(b);
    default:
      return unreachable(a.about);
  }
}

const codesOf = ({ seen }: LogEntry): string =>
  seen.reader.codes.map(({ code, status }) => `${code} ${status}`).join();
const outcomesOf = ({ seen }: LogEntry): string =>
  (seen.lastDrive?.cycles ?? []).map(({ outcome, codes }) => `${outcome} ${codes.join(' ')}`).join();

function meterDiffers(a: LogEntry, b: LogEntry): boolean {
  if (metered(a.seen) === null || a.seen.meter.function === 'off') return false;
  const [one, two] = [a.seen.meter.display, b.seen.meter.display];
  if (one.value === null || two.value === null) return one.digits !== two.digits;
  return apart(one.value, two.value, SAME_READING[a.seen.meter.function]);
}

function apart(one: number, two: number, floor: number): boolean {
  return Math.abs(one - two) > Math.max(floor, SAME_SHARE * Math.max(Math.abs(one), Math.abs(two)));
}
