import type { Scenario } from './Scenario.ts';
import type { ScenarioCard } from './ScenarioCard.ts';

/** What a learner may see of a scenario: neither faults nor remark nor the tests behind the steps. */
export function cardOf(scenario: Scenario): ScenarioCard {
  return {
    id: scenario.id,
    contentHash: scenario.contentHash,
    mode: scenario.mode,
    level: scenario.level,
    title: scenario.title,
    summary: scenario.summary,
    minutes: scenario.minutes,
    aims: scenario.aims,
    workOrder: scenario.workOrder,
    ...(scenario.tools === undefined ? {} : { tools: scenario.tools }),
    ...(scenario.limits === undefined ? {} : { limits: scenario.limits }),
    ...(scenario.weights === undefined ? {} : { weights: scenario.weights }),
    ...(scenario.variants === undefined ? {} : { drawn: true as const }),
    ...(scenario.variant === undefined ? {} : { variant: scenario.variant }),
    steps: scenario.steps.map(({ id, say, how }) => ({ id, say, how })),
  };
}
