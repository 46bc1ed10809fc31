import { areEmpty, wordsAmong } from './jobTexts.ts';
import type { Scenario } from './Scenario.ts';
import type { ScenarioCard } from './ScenarioCard.ts';

/** What a learner may see of a scenario: neither faults nor remark nor the tests behind the steps. */
export function cardOf(scenario: Scenario): ScenarioCard {
  const shown = new Set(sentencesShown(scenario));
  const words = wordsAmong([scenario.words], (sentence) => shown.has(sentence));
  return {
    id: scenario.id,
    contentHash: scenario.contentHash,
    ...(scenario.rig === undefined ? {} : { rig: scenario.rig }),
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
    ...(areEmpty(words) ? {} : { words }),
    steps: scenario.steps.map(({ id, say, how }) => ({ id, say, how })),
  };
}

/** Sentences that a learner may read before the job is closed. */
export function sentencesShown({
  title,
  summary,
  aims,
  workOrder,
  steps,
}: Omit<Scenario, 'contentHash'>): readonly string[] {
  const { vehicle, complaint, history, cautions } = workOrder;
  return [
    title,
    summary,
    ...aims,
    vehicle,
    complaint,
    ...history,
    ...cautions,
    ...steps.flatMap(({ say, how }) => [say, how]),
  ];
}
