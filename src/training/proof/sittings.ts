import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { LearnerName } from '../learners/Learner.ts';
import { sitScenario } from '../learners/sitScenario.ts';
import { type LearnerScores, type ScenarioOdds, scenarioFaults } from '../learners/validity.ts';
import type { Scenario } from '../scenario/Scenario.ts';

/** Which simulated learners are asked to sit, and under how many seeds. None where `seeds` is 0. */
export interface ProofLearners {
  readonly learners: readonly LearnerName[];
  readonly seeds: number;
}

/** What a truth costs, and what its complaint makes of it: what its learners are held against. */
export type Judged = JobPar & Pick<ScenarioOdds, 'prior' | 'favouriteIsTrue'>;

/** So many sittings make a median that can be held against somebody. */
const SURE_SEEDS = 5;

const BOOK: LearnerName = 'by-the-book';

/**
 * The learners' scores after each that has sat. Who misses a limit under few seeds sits again under more: one odd truck condemns
 * no scenario.
 */
export function* sittings(
  scenario: Scenario,
  tables: EvidenceTables,
  judged: Judged,
  { learners, seeds }: ProofLearners,
): Generator<readonly LearnerScores[], void, void> {
  if (seeds === 0 || learners.length === 0) return;
  const sit = (who: LearnerName, under: number): readonly LearnerScores[] =>
    sitScenario(scenario, tables, under, () => undefined, [who], judged).learners;
  let sat: readonly LearnerScores[] = [];
  for (const learner of learners) {
    sat = [...sat, ...sit(learner, seeds)];
    yield sat;
  }
  if (seeds >= SURE_SEEDS) return;
  const missed = scenarioFaults(judged, sat).flatMap((fault) =>
    'learner' in fault ? [fault.learner, ...(fault.kind === 'not-below-by-the-book' ? [BOOK] : [])] : [],
  );
  for (const learner of new Set(missed)) {
    const again = sit(learner, SURE_SEEDS);
    sat = sat.map((one) => again.find((other) => other.learner === one.learner) ?? one);
    yield sat;
  }
}
