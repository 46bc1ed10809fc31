import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';

/** What a learner took down at a read mark of a standard test. */
export interface Note {
  readonly test: StandardTestId;
  readonly shown: Outcome;
  /** The log entry that was written for it. */
  readonly entry: number;
  /** When the hands last moved before it: nothing was changed on the bench between. */
  readonly since: Tick;
  /** Tools renewed before it. */
  readonly renewed: readonly ItemId[];
}

/** What an entry's ten seconds take in. */
const ENTRY_TICKS = secondsToTicks(10);

/**
 * The notes that a log entry carries: what was shown in the ten seconds before it, and what stood there since the hands last
 * moved.
 */
export function carriedBy(entry: number, notes: readonly Note[]): readonly Note[] {
  const own = notes.filter((note) => note.entry === entry).at(-1);
  if (own === undefined) return [];
  const from = Math.min(own.shown.tick - ENTRY_TICKS, own.since);
  return notes.filter(({ shown }) => shown.tick >= from && shown.tick <= own.shown.tick);
}
