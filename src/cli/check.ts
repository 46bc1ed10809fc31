import { cliWords } from '../text/cli.ts';
import { checkWords, proofLines } from '../text/cliCheck.ts';
import type { ScenarioProof } from '../training/proof/ScenarioProof.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { CheckMessage, CheckTask } from './checkShare.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { openScenario } from './openScenario.ts';
import { sideBySide } from './sideBySide.ts';

const USUAL_SEEDS = '1';
const MOST_SEEDS = 100;

/**
 * `check SCENARIO…`: says of each file whether it is in order, and of each job whether it is fit to give out. Exit code 2
 * where a file is broken, 1 where one is not fit.
 */
export async function check({ files, json, options, flags }: CommandLine, output: Output): Promise<ExitCode> {
  if (files.length === 0) {
    output.err(cliWords.missingFiles);
    return 2;
  }
  const given = options['--seeds'] ?? USUAL_SEEDS;
  const seeds = /^\d{1,3}$/.test(given) ? Number(given) : MOST_SEEDS + 1;
  if (seeds > MOST_SEEDS) {
    output.err(checkWords.badSeeds(given));
    return 2;
  }
  const opened = files.map((file) => ({ file, opened: openScenario(file) }));
  const jobs = opened.filter((one) => one.opened.ok && isJob(one.opened.value.mode)).map(({ file }) => file);
  const proofs = flags.includes('--form') ? new Map() : await allProved(jobs, seeds, output);
  if (json)
    writeJson(
      output,
      opened.map((one) => jsonOf(one, proofs)),
    );
  else for (const one of opened) tell(one, proofs, output);
  const whole =
    opened.every((one) => one.opened.ok) && (flags.includes('--form') || proofs.size === jobs.length);
  if (!whole) return 2;
  return [...proofs.values()].every(({ fit }) => fit) ? 0 : 1;
}

interface Opened {
  readonly file: string;
  readonly opened: ReturnType<typeof openScenario>;
}
type Proofs = ReadonlyMap<string, ScenarioProof>;

function tell({ file, opened }: Opened, proofs: Proofs, output: Output): void {
  if (!opened.ok) {
    for (const line of opened.error.lines) output.err(line);
    return;
  }
  const { title, mode } = opened.value;
  const proof = proofs.get(file);
  if (proof !== undefined) for (const line of proofLines(file, proof)) output.out(line);
  else output.out(isJob(mode) ? checkWords.inOrder(file, title) : checkWords.introduction(file, title));
}

function jsonOf({ file, opened }: Opened, proofs: Proofs): object {
  if (!opened.ok) return { file, ok: false, problems: opened.error.problems, lines: opened.error.lines };
  const { id, contentHash } = opened.value;
  return { file, ok: true, id, contentHash, proof: proofs.get(file) ?? null };
}

/** The proofs by file; one that came to no end is left out, which has been said. */
async function allProved(files: readonly string[], seeds: number, output: Output): Promise<Proofs> {
  const script = new URL('./checkShare.ts', import.meta.url);
  const tasks = files.map((file) => ({ file, seeds }));
  let done = 0;
  const last = await sideBySide<CheckTask, CheckMessage>(script, tasks, {
    hear: () => undefined,
    isLast: () => {
      done++;
      output.err(checkWords.proving(done, files.length));
      return true;
    },
  });
  const proofs = new Map<string, ScenarioProof>();
  last.forEach((message, t) => {
    const file = files[t] ?? '';
    if (message?.kind === 'proved') proofs.set(file, message.proof);
    else for (const line of message?.lines ?? [checkWords.childFailed(file)]) output.err(line);
  });
  return proofs;
}
