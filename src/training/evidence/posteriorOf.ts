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
  const rows = tools.map((tool) =>
    likelihood.matters(tool) ? likelihood.logs(tool, asked, evident) : withGood,
  );
  const priors = tools.map((tool) => ln(tool.prior));
  let highest = Number.NEGATIVE_INFINITY;
  for (const [t, row] of rows.entries()) {
    for (const log of row) highest = Math.max(highest, log + (priors[t] as number));
  }
  const bySuspect = suspects.map(() => 0);
  const byTool = tools.map(() => 0);
  for (const [t, row] of rows.entries()) {
    for (let s = 0; s < bySuspect.length; s++) {
      const weight = (prior[s] ?? 0) * exp((row[s] as number) + (priors[t] as number) - highest);
      bySuspect[s] = (bySuspect[s] as number) + weight;
      byTool[t] = (byTool[t] as number) + weight;
    }
  }
  return new Posterior(suspects, tools, normalised(bySuspect), normalised(byTool));
}

/** Codes and drives are known from the complaint already, and worlds are not driven for them. */
function isEvidence(one: Asked | undefined): boolean {
  return one !== undefined && one.question.about !== 'codes' && one.question.about !== 'drive';
}

/** The most entries that a verdict may rest on. */
export const MOST_CITED = 8;
