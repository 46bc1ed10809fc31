import { ok, type Result } from '../base/Result.ts';
import { cliWords } from '../text/cli.ts';
import { checkWords, proofLines } from '../text/cliCheck.ts';
import { handoutWords } from '../text/cliHandout.ts';
import { speakOfRig } from '../text/translate.ts';
import type { SealedFile } from '../training/handout/JobFile.ts';
import type { ScenarioProof } from '../training/proof/ScenarioProof.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { CheckMessage, CheckTask } from './checkShare.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { type NotHanded, readHanded } from './openHanded.ts';
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
  const handed = files.map((file) => ({ file, sealed: sealedAt(file) }));
  const opened = handed
    .filter(({ sealed }) => sealed === null)
    .map(({ file }) => ({ file, opened: openScenario(file) }));
  const jobs = opened.filter((one) => one.opened.ok && isJob(one.opened.value.mode)).map(({ file }) => file);
  const proofs = flags.includes('--form') ? new Map() : await allProved(jobs, seeds, output);
  const sealed = handed.flatMap(({ file, sealed: one }) => (one === null ? [] : [{ file, sealed: one }]));
  if (json) writeJson(output, [...opened.map((one) => jsonOf(one, proofs)), ...sealed.map(jsonOfSealed)]);
  else {
    for (const one of opened) tell(one, proofs, output);
    for (const one of sealed) tellSealed(one, output);
  }
  const whole =
    opened.every((one) => one.opened.ok) &&
    sealed.every((one) => one.sealed.ok) &&
    (flags.includes('--form') || proofs.size === jobs.length);
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
  const { title, mode, rig } = opened.value;
  speakOfRig(rig);
  const proof = proofs.get(file);
  if (proof !== undefined) for (const line of proofLines(file, proof)) output.out(line);
  else output.out(isJob(mode) ? checkWords.inOrder(file, title) : checkWords.introduction(file, title));
}

function jsonOf({ file, opened }: Opened, proofs: Proofs): object {
  if (!opened.ok) return { file, ok: false, problems: opened.error.problems, lines: opened.error.lines };
  const { id, contentHash } = opened.value;
  return { file, ok: true, id, contentHash, proof: proofs.get(file) ?? null };
}

/** A sealed file is looked at as it is: its proof would tell what is within. */
interface SealedAt {
  readonly file: string;
  readonly sealed: Result<SealedFile, NotHanded>;
}

/** The sealed file at a path, whole or broken; null where there is none of that kind. */
function sealedAt(path: string): SealedAt['sealed'] | null {
  const handed = readHanded(path);
  if (!handed.ok) return handed.error.code.startsWith('job-file-') ? handed : null;
  return handed.value.kind === 'sealed' ? ok(handed.value.file) : null;
}

function tellSealed({ file, sealed }: SealedAt, output: Output): void {
  if (sealed.ok) output.out(handoutWords.checkSealed(file, sealed.value.title, sealed.value.contentHash));
  else for (const line of sealed.error.lines) output.err(line);
}

function jsonOfSealed({ file, sealed }: SealedAt): object {
  if (!sealed.ok) return { file, ok: false, sealed: true, lines: sealed.error.lines };
  const { title, contentHash, asks } = sealed.value;
  return { file, ok: true, sealed: true, title, contentHash, asks };
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
