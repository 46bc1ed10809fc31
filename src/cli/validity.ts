import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { filesOf } from '../platform/node/textFiles.ts';
import { fileProblemLine } from '../text/cli.ts';
import { validityLines, validityWords } from '../text/cliValidity.ts';
import { type ScenarioValidity, validityTable } from '../training/learners/validity.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { openScenario } from './openScenario.ts';
import type { ValidityMessage, ValidityTask } from './validityShare.ts';

const USUAL_SEEDS = '5';
const MOST_SEEDS = 1000;
/** More processes than this want more memory than they save time. */
const MOST_PROCESSES = 4;

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

/** Every task worked, side by side as far as the machine allows; null for those that came to nothing. */
async function allSat(
  tasks: readonly ValidityTask[],
  output: Output,
): Promise<readonly (ScenarioValidity | null)[]> {
  const found: (ScenarioValidity | null)[] = tasks.map(() => null);
  let next = 0;
  const hand = async (): Promise<void> => {
    const child = fork(fileURLToPath(new URL('./validityShare.ts', import.meta.url)));
    for (let t = next++; t < tasks.length; t = next++) {
      const task = tasks[t];
      if (task !== undefined) found[t] = await sat(child, task, output);
    }
    child.disconnect();
  };
  const hands = Math.min(tasks.length, MOST_PROCESSES, availableParallelism());
  await Promise.all(Array.from({ length: hands }, hand));
  return found;
}

/** One task worked by a child; null where it could not be opened, or the child ended early. */
function sat(child: ChildProcess, task: ValidityTask, output: Output): Promise<ScenarioValidity | null> {
  return new Promise((resolve) => {
    const end = (found: ScenarioValidity | null): void => {
      child.off('message', hear);
      child.off('close', broken);
      resolve(found);
    };
    const broken = (): void => {
      output.err(validityWords.childFailed(task.file));
      end(null);
    };
    const hear = (message: ValidityMessage): void => {
      if (message.kind === 'sat')
        output.err(validityWords.sat(message.scenario, message.learner, message.done, message.all));
      else if (message.kind === 'done') end(message.validity);
      else {
        for (const line of message.lines) output.err(line);
        end(null);
      }
    };
    child.on('message', hear);
    child.on('close', broken);
    if (child.connected) child.send(task);
    else broken();
  });
}
