import { validityWords } from '../text/cliValidity.ts';
import type { LearnerName } from '../training/learners/Learner.ts';
import { sitScenario } from '../training/learners/sitScenario.ts';
import type { ScenarioValidity } from '../training/learners/validity.ts';
import { isJob } from '../training/scenario/modes.ts';
import { keptTables } from './keptTables.ts';
import { openScenario } from './openScenario.ts';
import { startedAs } from './startedAs.ts';

/** One scenario to be sat by every learner under so many seeds. */
export interface ValidityTask {
  readonly file: string;
  readonly seeds: number;
}

/** What the process that sits a scenario tells the one that asked for it. */
export type ValidityMessage =
  | {
      readonly kind: 'sat';
      readonly scenario: string;
      readonly learner: LearnerName;
      readonly done: number;
      readonly all: number;
    }
  | { readonly kind: 'done'; readonly validity: ScenarioValidity }
  | { readonly kind: 'not-opened'; readonly lines: readonly string[] };

function work({ file, seeds }: ValidityTask, tell: (message: ValidityMessage) => void): void {
  const scenario = openScenario(file);
  if (!scenario.ok) return tell({ kind: 'not-opened', lines: scenario.error.lines });
  if (!isJob(scenario.value.mode))
    return tell({ kind: 'not-opened', lines: [validityWords.notScored(file)] });
  const tables = keptTables(scenario.value.rig);
  if (!tables.ok) return tell({ kind: 'not-opened', lines: [tables.error] });
  const { id } = scenario.value;
  const validity = sitScenario(scenario.value, tables.value, seeds, (learner, done, all) =>
    tell({ kind: 'sat', scenario: id, learner, done, all }),
  );
  tell({ kind: 'done', validity });
}

// Started by `validity` as a process of its own: it is sent one scenario after the other, until the line is closed.
if (startedAs(import.meta.url)) {
  process.on('message', (task: ValidityTask) => work(task, (message) => process.send?.(message)));
}
