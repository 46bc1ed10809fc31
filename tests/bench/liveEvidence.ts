import { readFileSync } from 'node:fs';
import { secondsToTicks } from '../../src/base/ticks.ts';
import type { EvidenceTables } from '../../src/training/evidence/EvidenceTables.ts';
import { openTables } from '../../src/training/evidence/openTables.ts';
import { SittingEvidence } from '../../src/training/evidence/SittingEvidence.ts';
import { weighRecord } from '../../src/training/evidence/weighRecord.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { LongSitting } from './longSitting.ts';
import { cpuMs, median } from './measure.ts';

/** How often the page tells its evidence that time has passed, and how much it lets it work at a time. */
const TOLD_SECONDS = 0.5;
const TURNS = 4;

export interface LiveEvidence {
  /** Median and worst processor time from a log entry until its chances are known, all benches in step before it, milliseconds. */
  readonly entryMs: number;
  readonly worstEntryMs: number;
  /** Processor time of all the work, as a share of the sitting's time up to the verdict. */
  readonly share: number;
  /** Longest processor time of one turn, milliseconds. */
  readonly longestTurnMs: number;
}

export function keptTables(): EvidenceTables {
  const opened = openTables(readFileSync('assets/evidence/shop.json', 'utf8'));
  if (!opened.ok) throw new Error(opened.error.code);
  return opened.value;
}

/** A sitting weighed while it goes on, as in the browser. */
export function liveEvidence({ scenario, record }: LongSitting, tables: EvidenceTables): LiveEvidence {
  const begun = SittingEvidence.begin(scenario, Sitting.begin(scenario, record.seed).record(), tables);
  if (!begun.ok) throw new Error(begun.error.code);
  const evidence = begun.value;
  const entries: number[] = [];
  let now = 0;
  let longestTurnMs = 0;
  const work = (until: () => boolean): number => {
    const before = cpuMs();
    for (let last = before, turns = 1; turns > 0 && !until(); ) {
      turns = evidence.work(TURNS);
      const here = cpuMs();
      longestTurnMs = Math.max(longestTurnMs, (here - last) / TURNS);
      last = here;
    }
    return cpuMs() - before;
  };
  const before = cpuMs();
  for (const timed of record.actions) {
    for (; now < timed.tick; now = Math.min(now + secondsToTicks(TOLD_SECONDS), timed.tick)) {
      evidence.passed(now);
      work(() => false);
    }
    evidence.passed(timed.tick);
    work(() => false);
    evidence.acted(timed);
    if (timed.action.kind === 'give-verdict') break;
    if (timed.action.kind === 'log') entries.push(work(() => evidence.settled));
  }
  const share = ((cpuMs() - before) * secondsToTicks(1)) / (1000 * now);
  return { entryMs: median(entries), worstEntryMs: Math.max(...entries), share, longestTurnMs };
}

/** Processor time to weigh a whole record at one go, milliseconds. */
export function weighedMs({ scenario, record }: LongSitting, tables: EvidenceTables): number {
  const before = cpuMs();
  const facts = weighRecord(scenario, record, tables);
  if (!facts.ok) throw new Error(facts.error.code);
  return cpuMs() - before;
}
