import { filesOf } from '../platform/node/textFiles.ts';
import { fileProblemLine } from '../text/cli.ts';
import { validityLines, validityWords } from '../text/cliValidity.ts';
import { type ScenarioValidity, validityTable } from '../training/learners/validity.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { openScenario } from './openScenario.ts';
import { sideBySide } from './sideBySide.ts';
import type { ValidityMessage, ValidityTask } from './validityShare.ts';

const USUAL_SEEDS = '5';
const MOST_SEEDS = 1000;

/** `validity [SCENARIO…]`: simulated learners sit every scenario, and how well their scores tell them apart. */
export async function validity(
  { files, json, options }: CommandLine,
  shipped: string,
  output: Output,
): Promise<ExitCode> {
  const given = options['--seeds'] ?? USUAL_SEEDS;
  const seeds = /^\d{1,4}$/.test(given) ? Number(given) : 0;
  if (seeds < 1 || seeds > MOST_SEEDS) {
    output.err(validityWords.badSeeds(given));
    return 2;
  }
  const all = filesOf(shipped, '.yaml');
  if (!all.ok) {
    output.err(fileProblemLine(shipped, all.error));
    return 2;
  }
  const asked = files.length > 0 ? files : all.value.filter(asksForAVerdict);
  const found = await allSat(
    asked.map((file) => ({ file, seeds })),
    output,
  );
  const scenarios = found.filter((one) => one !== null);
  if (scenarios.length < asked.length) return 2;
  const table = validityTable(scenarios);
  if (json) writeJson(output, table);
  else for (const line of validityLines(table)) output.out(line);
  return table.holds ? 0 : 1;
}

/** An introduction is not scored, so there is nothing to compare. A file that does not open says so where it is sat. */
function asksForAVerdict(file: string): boolean {
  const scenario = openScenario(file);
  return !scenario.ok || isJob(scenario.value.mode);
}

/** Every task worked; null for those that came to nothing, which has been said. */
async function allSat(
  tasks: readonly ValidityTask[],
  output: Output,
): Promise<readonly (ScenarioValidity | null)[]> {
  const script = new URL('./validityShare.ts', import.meta.url);
  const last = await sideBySide<ValidityTask, ValidityMessage>(script, tasks, {
    hear: (message) => {
      if (message.kind !== 'sat') return;
      output.err(validityWords.sat(message.scenario, message.learner, message.done, message.all));
    },
    isLast: ({ kind }) => kind !== 'sat',
  });
  return last.map((message, t) => {
    if (message?.kind === 'done') return message.validity;
    const lines =
      message?.kind === 'not-opened' ? message.lines : [validityWords.childFailed(tasks[t]?.file ?? '')];
    for (const line of lines) output.err(line);
    return null;
  });
}
