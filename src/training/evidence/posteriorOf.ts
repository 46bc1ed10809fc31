import { exp, ln } from '../../base/maths.ts';
import { normalised } from './information.ts';
import { Posterior } from './Posterior.ts';
import type { Suspect } from './Suspect.ts';
import type { SuspectLikelihood } from './suspectLikelihood.ts';
import type { ToolState } from './toolStates.ts';
import type { Asked } from './watchShown.ts';

/** What everything is held against: the suspects with their chances after the complaint, and the tools' own. */
export interface Beliefs {
  readonly suspects: readonly Suspect[];
  /** Sums to 1. */
  readonly prior: readonly number[];
  readonly tools: readonly ToolState[];
}

/**
 * Bayes over suspects and tools together, from what was shown at the questions of these numbers (all of them unless
 * told otherwise).
 */
export function posteriorOf(
  { suspects, prior, tools }: Beliefs,
  likelihood: SuspectLikelihood,
  asked: readonly Asked[],
  numbers: readonly number[] = asked.map((_, n) => n),
): Posterior {
  const evident = numbers.filter((number) => isEvidence(asked[number]));
  const withGood = likelihood.logs(null, asked, evident);
  const logs = tools.map(({ bad, prior: ofTool }) => {
    const fromTools = ln(ofTool);
    const ofState = likelihood.matters(bad) ? likelihood.logs(bad, asked, evident) : withGood;
    return ofState.map((log) => log + fromTools);
  });
  let highest = Number.NEGATIVE_INFINITY;
  for (const row of logs) for (const log of row) highest = Math.max(highest, log);
  const weights = logs.map((row) => row.map((log, s) => (prior[s] ?? 0) * exp(log - highest)));
  const bySuspect = suspects.map((_, s) => weights.reduce((sum, row) => sum + (row[s] ?? 0), 0));
  const byTool = weights.map((row) => row.reduce((sum, weight) => sum + weight, 0));
  return new Posterior(suspects, tools, normalised(bySuspect), normalised(byTool));
}

/** Codes and drives are known from the complaint already, and worlds are not driven for them. */
function isEvidence(one: Asked | undefined): boolean {
  return one !== undefined && one.question.about !== 'codes' && one.question.about !== 'drive';
}

/** The most entries that a verdict may rest on. */
export const MOST_CITED = 8;

/**
 * How far the evidence carries a verdict: the lower of what the cited entries and what everything shown leave of it, so that
 * citing only what agrees earns nothing.
 */
export function carried(
  cited: Posterior,
  shown: Posterior,
  item: string,
): { readonly item: number; readonly cited: number; readonly shown: number } {
  const one = cited.ofItem(item);
  const other = shown.ofItem(item);
  return { item: Math.min(one, other), cited: one, shown: other };
}
