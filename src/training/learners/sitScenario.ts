import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import { parOf } from '../evidence/parOf.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { GAMING_LEARNERS, LEARNERS, type LearnerName } from './Learner.ts';
import { learnerOf } from './learnerOf.ts';
import { oddsOf } from './oddsOf.ts';
import { sit } from './sit.ts';
import { ToolFactor } from './ToolFactor.ts';
import { type SatScore, type ScenarioValidity, scenarioValidity } from './validity.ts';

/** Every learner (or those of `all`) sits the scenario under the seeds `validity-0`, `validity-1` and so on, so that they are paired. */
export function sitScenario(
  scenario: Scenario,
  tables: EvidenceTables,
  seeds: number,
  tell: (learner: LearnerName, done: number, all: number) => void,
  all: readonly LearnerName[] = [...LEARNERS, ...GAMING_LEARNERS],
  par: JobPar = parOf(scenario, tables),
): ScenarioValidity {
  const judges = { tables, factor: new ToolFactor(tables), par };
  const sittings: SatScore[] = [];
  for (const [l, learner] of all.entries()) {
    for (let i = 0; i < seeds; i++) {
      const seed = `validity-${i}`;
      const { facts } = sit(scenario, learner, learnerOf(learner, scenario), seed, judges);
      const { named, right } = facts.verdict;
      sittings.push({ scenario: scenario.id, learner, seed, score: facts.score.total, named, right });
    }
    tell(learner, (l + 1) * seeds, all.length * seeds);
  }
  return scenarioValidity(oddsOf(scenario, tables), sittings);
}
