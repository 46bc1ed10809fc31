import type { ItemId } from '../../sim/devices/items.ts';
import type { LogEntry } from '../sitting/LogEntry.ts';
import type { VacuumPart } from './DebriefFacts.ts';
import { AFTER_TICKS, lastRenewal, openAtRest, restsOpen } from './decisiveRetest.ts';
import { entriesWhere } from './setups.ts';
import type { Timeline } from './Timeline.ts';
import { switchSeen, type VacuumBout, vacuumBouts } from './vacuumBouts.ts';

/**
 * Which parts of the vacuum test were seen on the part as fitted, each with the entries that show it: of the trial that
 * came furthest. A trial whose vacuum was drawn before the part went on counts for what was read of it since, but has no
 * rest before it. Only for words: what the test is worth is decided over one whole trial.
 */
export function vacuumParts(timeline: Timeline, item: ItemId): readonly VacuumPart[] {
  const since = lastRenewal(timeline, item);
  if (since === null) return [];
  const { end } = timeline;
  const standing = vacuumBouts(timeline, 0, end.tick).filter(({ from, to }) => from < since && to > since);
  const tries = [...standing, ...vacuumBouts(timeline, since, end.tick)].map((bout) =>
    partsOf(timeline, since, bout),
  );
  const atRest = openAtRest(timeline, since, end.tick);
  const untried: readonly VacuumPart[] = [
    part('rest', atRest, timeline.log, (entry) => entry.tick >= since && restsOpen(logged(entry))),
    { part: closedPart(timeline), tick: null, entries: [] },
    { part: 'back', tick: null, entries: [] },
  ];
  return tries.reduce((best, one) => (seenOf(one) > seenOf(best) ? one : best), tries[0] ?? untried);
}

function seenOf(parts: readonly VacuumPart[]): number {
  return parts.filter(({ tick }) => tick !== null).length;
}

/** Where nothing is to be capped, nothing is asked for. */
function closedPart({ end }: Timeline): VacuumPart['part'] {
  return end.surface.cappedForHold.length > 0 ? 'closed-capped' : 'closed';
}

function partsOf(timeline: Timeline, since: number, bout: VacuumBout): readonly VacuumPart[] {
  const { moments, log, end } = timeline;
  const from = Math.max(bout.from, since);
  const until = Math.min(bout.to + AFTER_TICKS, end.tick);
  const within = ({ tick }: { readonly tick: number }): boolean => tick >= from && tick <= bout.to;
  const closed = moments.find((moment) => within(moment) && switchSeen(moment) === 'closed');
  const shown = bout.capped && bout.under.includes('closed') ? (closed?.tick ?? null) : null;
  return [
    part('rest', openAtRest(timeline, since, bout.from), log, (entry) => {
      return entry.tick >= since && entry.tick <= bout.from && restsOpen(logged(entry));
    }),
    part(
      closedPart(timeline),
      shown,
      log,
      (entry) => within(entry) && switchSeen(logged(entry)) === 'closed',
    ),
    part('back', openAtRest(timeline, bout.to, until), log, (entry) => {
      return entry.tick >= bout.to && entry.tick <= until && restsOpen(logged(entry));
    }),
  ];
}

function part(
  name: VacuumPart['part'],
  tick: number | null,
  log: readonly LogEntry[],
  shows: (entry: LogEntry) => boolean,
): VacuumPart {
  return { part: name, tick, entries: tick === null ? [] : entriesWhere(log, shows) };
}

/** What an entry holds, seen as the moment it was written. */
function logged({ seen }: LogEntry) {
  return { action: { kind: 'log' as const }, seen };
}
