import type { Tick } from '../../base/ticks.ts';
import { secondsToTicks } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { decisiveWith } from './decisiveTest.ts';
import { showsSoundFeed, showsSoundGround } from './loadedSides.ts';
import { entriesWhere, inHgOf, isLoaded } from './setups.ts';
import type { Timeline } from './Timeline.ts';
import { switchSeen, vacuumBouts } from './vacuumBouts.ts';

/** The look back at the meter belongs to the trial for this long after it. */
export const AFTER_TICKS = secondsToTicks(60);
const LET_OFF_INHG = 0.5;

export interface Retest {
  readonly ticks: readonly Tick[];
  readonly entries: readonly number[];
}

/**
 * The decisive test passed on the part as fitted, after its renewal: for the unit and the sense circuit the sense
 * reading open, closed under vacuum with the air port capped, and open again on release; for supply and ground a click
 * through the mated plug, and for what may add ohms to them its side read sound under that load, for a coil still clicks
 * through many ohms too many; for plug and controller vacuum and click; for hoses and the vapour side the controller's own monitor run to a pass on
 * the road. Null when it was not done or not passed, or when the road showed afterwards that the truck is not mended: what
 * passes on the bench and fails again on the last drive proves nothing. Tools have no part fitted and no such test.
 */
export function decisiveRetest(timeline: Timeline, item: ItemId): Retest | null {
  const since = lastRenewal(timeline, item);
  if (since === null || roadRefutes(timeline, since)) return null;
  switch (decisiveWith(timeline.scenario.tools, item)) {
    case 'vacuum':
      return vacuumRetest(timeline, since);
    case 'click':
      return clickRetest(timeline, since);
    case 'click-and-feed':
      return both(clickRetest(timeline, since), loadedRetest(timeline, since, showsSoundFeed));
    case 'click-and-ground':
      return both(clickRetest(timeline, since), loadedRetest(timeline, since, showsSoundGround));
    case 'vacuum-and-click':
      return both(vacuumRetest(timeline, since), clickRetest(timeline, since));
    case 'monitor':
      return monitorRetest(timeline, since);
    case 'hold-at-closed-end':
    case 'known-source':
      return null;
  }
}

/** When the item was last renewed; null when it never was. */
export function lastRenewal({ moments }: Timeline, item: ItemId): Tick | null {
  const renewals = moments.filter(({ action }) => action?.kind === 'renew' && action.item === item);
  return renewals.at(-1)?.tick ?? null;
}

function both(one: Retest | null, other: Retest | null): Retest | null {
  if (one === null || other === null) return null;
  return { ticks: [...one.ticks, ...other.ticks], entries: [...one.entries, ...other.entries] };
}

/** That side of the solenoid's circuit read within its limit, with the current on. */
export function loadedRetest(
  { moments, log }: Timeline,
  since: Tick,
  isSound: (seen: Observation) => boolean,
): Retest | null {
  const sound = moments.find(({ tick, seen }) => tick >= since && seen.unit === 'truck' && isSound(seen));
  if (sound === undefined) return null;
  return {
    ticks: [sound.tick],
    entries: entriesWhere(log, ({ tick, seen }) => tick >= since && isSound(seen)),
  };
}

export function vacuumRetest(timeline: Timeline, since: Tick): Retest | null {
  const { end } = timeline;
  for (const bout of vacuumBouts(timeline, since, end.tick)) {
    if (!bout.capped || !bout.under.includes('closed')) continue;
    const before = openAtRest(timeline, since, bout.from);
    const after = openAtRest(timeline, bout.to, Math.min(bout.to + AFTER_TICKS, end.tick));
    if (before === null || after === null) continue;
    const entries = entriesWhere(timeline.log, ({ tick }) => tick >= before && tick <= bout.to + AFTER_TICKS);
    return { ticks: [bout.from, after], entries };
  }
  return null;
}

/** Latest tick in the span at which the sense circuit read open with no vacuum. */
export function openAtRest({ moments }: Timeline, from: Tick, until: Tick): Tick | null {
  const found = moments.filter((moment) => moment.tick >= from && moment.tick <= until && restsOpen(moment));
  return found.at(-1)?.tick ?? null;
}

export function restsOpen(moment: Parameters<typeof switchSeen>[0]): boolean {
  return inHgOf(moment.seen.gauge.needleKPa) < LET_OFF_INHG && switchSeen(moment) === 'open';
}

/** Drives since a tick, each with how its last cycle ended in which the monitor ran; those in which it never ran are left out. */
function judgedDrives({ moments }: Timeline, since: Tick) {
  return moments.flatMap(({ tick, action, seen }) => {
    if (tick < since || action?.kind !== 'road-test') return [];
    const judged = (seen.lastDrive?.cycles ?? []).filter(({ outcome }) => outcome !== 'not-run').at(-1);
    return judged === undefined ? [] : [{ tick, outcome: judged.outcome }];
  });
}

/** The last drive that tells anything tells of a fault. */
export function roadRefutes(timeline: Timeline, since: Tick): boolean {
  const last = judgedDrives(timeline, since).at(-1);
  return last !== undefined && last.outcome !== 'passed';
}

/** A drive after the renewal whose last judged cycle passed. */
export function monitorRetest(timeline: Timeline, since: Tick): Retest | null {
  const { log } = timeline;
  const last = judgedDrives(timeline, since)
    .filter(({ outcome }) => outcome === 'passed')
    .at(-1);
  if (last === undefined) return null;
  return {
    ticks: [last.tick],
    entries: entriesWhere(log, ({ tick, about }) => about === 'drive' && tick === last.tick),
  };
}

export function clickRetest({ moments, happenings, log }: Timeline, since: Tick): Retest | null {
  const clicks = happenings.filter(({ kind, tick }) => kind === 'click-on' && tick >= since);
  const through = clicks.filter(({ tick }) => {
    const next = moments.find((moment) => moment.tick >= tick);
    return (
      next !== undefined &&
      next.seen.unit === 'truck' &&
      (isLoaded(next.seen) || isLoaded(next.before) || next.seen.reader.command === 'pulse')
    );
  });
  if (through.length === 0) return null;
  return {
    ticks: through.map(({ tick }) => tick),
    entries: entriesWhere(log, (entry) => entry.tick >= since && entry.heard.clicksOn > 0),
  };
}
