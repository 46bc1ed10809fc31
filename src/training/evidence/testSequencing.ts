import { assert } from '../../base/assert.ts';
import { informationGain, normalised } from './information.ts';

/**
 * Which states a set of tests tells apart: `fails[t][s]` is true where test t fails in state s. Costs are positive, in
 * any one unit. At most 16 states.
 * Source of the problem: Pattipati and Alexandridis, "Application of heuristic search and information theory to
 * sequential fault diagnosis" (1990).
 */
export interface SequencingProblem {
  readonly priors: readonly number[];
  readonly costs: readonly number[];
  readonly fails: readonly (readonly boolean[])[];
}

/** A plan's mean cost, and the test it begins with; null where nothing is left to tell apart. */
export interface SequencingPlan {
  readonly cost: number;
  readonly first: number | null;
  /** The test for every set of states that the plan may come to, by its bits (bit s stands for state s). */
  readonly choice: ReadonlyMap<number, number>;
}

/** The cheapest sequence on the average, by dynamic programming over the sets of states still possible. */
export function cheapestSequence(problem: SequencingProblem): SequencingPlan {
  return plan(problem, (set, useful, costOf) => {
    let best = useful[0] as number;
    for (const test of useful) if (costOf(set, test) < costOf(set, best)) best = test;
    return best;
  });
}

/** The sequence that takes the most information for its cost at each step. */
export function greedySequence(problem: SequencingProblem): SequencingPlan {
  return plan(problem, (set, useful) => {
    let best = useful[0] as number;
    for (const test of useful)
      if (gainPerCost(problem, set, test) > gainPerCost(problem, set, best)) best = test;
    return best;
  });
}

type Choose = (
  set: number,
  useful: readonly number[],
  costOf: (set: number, test: number) => number,
) => number;

function plan(problem: SequencingProblem, choose: Choose): SequencingPlan {
  const { priors, costs, fails } = problem;
  assert(priors.length > 0 && priors.length <= 16, 'sequencing takes 1 to 16 states', {
    states: priors.length,
  });
  const failing = fails.map((row) => row.reduce((bits, fail, s) => (fail ? bits | (1 << s) : bits), 0));
  const choice = new Map<number, number>();
  const known = new Map<number, number>();
  const mass = (set: number): number => priors.reduce((sum, p, s) => (set & (1 << s) ? sum + p : sum), 0);
  // Cost is weighted by the set's own mass, so that no division by it is needed.
  const afterTest = (set: number, test: number): number => {
    const bad = set & (failing[test] as number);
    return (costs[test] as number) * mass(set) + weightedCost(bad) + weightedCost(set & ~bad);
  };
  const weightedCost = (set: number): number => {
    const before = known.get(set);
    if (before !== undefined) return before;
    const useful = failing.flatMap((bits, test) => ((set & bits) !== 0 && (set & ~bits) !== 0 ? [test] : []));
    let cost = 0;
    if (useful.length > 0) {
      const test = choose(set, useful, afterTest);
      choice.set(set, test);
      cost = afterTest(set, test);
    }
    known.set(set, cost);
    return cost;
  };
  const all = (1 << priors.length) - 1;
  const cost = weightedCost(all);
  return { cost, first: choice.get(all) ?? null, choice };
}

function gainPerCost({ priors, costs, fails }: SequencingProblem, set: number, test: number): number {
  const within = normalised(priors.map((p, s) => (set & (1 << s) ? p : 0)));
  const row = (fails[test] as readonly boolean[]).map((fail) => (fail ? 1 : 0));
  return informationGain(within, [row, row.map((fail) => 1 - fail)]) / (costs[test] as number);
}
