import { assert } from '../../base/assert.ts';
import { Random } from '../../base/Random.ts';
import type { EvidenceFacts } from '../evidence/EvidenceFacts.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { seedOfSitting } from '../scenario/seedPolicy.ts';
import type { DebriefFacts } from '../score/DebriefFacts.ts';
import { debrief } from '../score/debrief.ts';
import { Sitting } from '../sitting/Sitting.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import type { Learner, LearnerName } from './Learner.ts';
import { LearnersBench } from './LearnersBench.ts';
import type { ToolFactor } from './ToolFactor.ts';
import { weighByTable } from './weighByTable.ts';

/** A job as a simulated learner sat it. */
export interface SatJob {
  readonly record: SittingRecord;
  readonly evidence: EvidenceFacts;
  readonly facts: DebriefFacts;
}

/** What learners are judged by. */
export interface Judges {
  readonly tables: EvidenceTables;
  readonly factor: ToolFactor;
  readonly par: JobPar;
}

/** Sits a scenario under a seed, which draws the rig's tolerances and the learner's own chances, and judges the sitting. */
export function sit(
  scenario: Scenario,
  name: LearnerName,
  learner: Learner,
  seed: string,
  { tables, factor, par }: Judges,
): SatJob {
  const sitting = Sitting.begin(
    scenario,
    seedOfSitting(scenario, () => seed),
  );
  const bench = new LearnersBench(
    sitting,
    tables,
    scenario.drives,
    Random.of(seed, `${name} at ${scenario.id}`),
  );
  learner(bench);
  const record = sitting.record();
  const evidence = weighByTable({ scenario, view: sitting.view(), notes: bench.notes }, tables, factor);
  const facts = debrief(scenario, record, evidence, par);
  assert(facts.ok, 'what a learner did can be judged', { scenario: scenario.id, name, seed, facts });
  return { record, evidence, facts: facts.value };
}
