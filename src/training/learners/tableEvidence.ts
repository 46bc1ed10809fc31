import { exp, ln } from '../../base/maths.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { Shown } from '../evidence/Shown.ts';
import type { Note } from './Note.ts';

/** What codes and drives say is in the complaint already. */
const NOT_EVIDENCE: ReadonlySet<string> = new Set(['codes', 'drive']);

/** What was shown by test, the tests by their numbers in the table; runs of one test are repeats of one another. */
export function byTest(
  tables: EvidenceTables,
  notes: readonly Note[],
): ReadonlyMap<number, readonly Shown[]> {
  const runs = new Map<number, Shown[]>();
  for (const { test, shown } of notes) {
    const number = tables.tests.findIndex(({ id }) => id === test);
    if (number < 0 || NOT_EVIDENCE.has(shown.channel)) continue;
    const run = runs.get(number) ?? [];
    runs.set(number, run);
    run.push(shown);
  }
  return runs;
}

/** Logarithms of the likelihoods under each suspect, the best of them at 0: what the tables say of some notes. */
export function logsOf(tables: EvidenceTables, notes: readonly Note[]): readonly number[] {
  const logs = tables.suspects.map(() => 0);
  for (const [test, shown] of byTest(tables, notes)) {
    const likelihoods = tables.evidence.likelihoods(test, shown);
    for (const [s, one] of likelihoods.entries()) logs[s] = (logs[s] ?? 0) + ln(Math.max(one, LEAST));
  }
  return fromBest(logs);
}

/** Keeps a logarithm finite. */
const LEAST = 1e-300;

export function fromBest(logs: readonly number[]): readonly number[] {
  const best = logs.reduce((most, log) => Math.max(most, log), Number.NEGATIVE_INFINITY);
  return logs.map((log) => log - best);
}

/** Prior times likelihood, summing to 1. */
export function weighed(prior: readonly number[], logs: readonly number[]): number[] {
  const weights = fromBest(logs).map((log, s) => (prior[s] ?? 0) * exp(log));
  const sum = weights.reduce((total, weight) => total + weight, 0);
  return weights.map((weight) => weight / sum);
}
