import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { Posterior } from '../evidence/Posterior.ts';
import { priorOfJob } from '../evidence/priorOfJob.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { rightVerdicts } from '../score/truth.ts';
import type { ScenarioOdds } from './validity.ts';

/** What the complaint makes of a scenario's truth. */
export function oddsOf(scenario: Scenario, tables: EvidenceTables): ScenarioOdds {
  const posterior = new Posterior(tables.suspects, [], priorOfJob(scenario, tables), []);
  const right = rightVerdicts(scenario);
  return {
    scenario: scenario.id,
    prior: Math.max(...right.map((item) => posterior.ofItem(item))),
    favouriteIsTrue: right.some((item) => item === posterior.leading().item),
  };
}
