import { LEARNERS } from '../training/learners/Learner.ts';
import { proveScenario } from '../training/proof/proveScenario.ts';
import type { ScenarioProof } from '../training/proof/ScenarioProof.ts';
import { keptTables } from './keptTables.ts';
import { openScenario } from './openScenario.ts';
import { startedAs } from './startedAs.ts';

/** One scenario to be proved, with every learner sitting it under so many seeds. */
export interface CheckTask {
  readonly file: string;
  readonly seeds: number;
}

export type CheckMessage =
  | { readonly kind: 'proved'; readonly proof: ScenarioProof }
  | { readonly kind: 'not-opened'; readonly lines: readonly string[] };

/** Proves one scenario: those who work at it sit it, those who play for points are left to `validity`. */
export function workCheck({ file, seeds }: CheckTask): CheckMessage {
  const scenario = openScenario(file);
  if (!scenario.ok) return { kind: 'not-opened', lines: scenario.error.lines };
  const tables = keptTables(scenario.value.rig);
  if (!tables.ok) return { kind: 'not-opened', lines: [tables.error] };
  return {
    kind: 'proved',
    proof: proveScenario(scenario.value, tables.value, { learners: LEARNERS, seeds }),
  };
}

// Started by `check` as a process of its own: it is sent one scenario after the other, until the line is closed.
if (startedAs(import.meta.url)) {
  process.on('message', (task: CheckTask) => process.send?.(workCheck(task)));
}
