import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { calibrationLines, calibrationWords } from '../text/cliCalibration.ts';
import { type CalibrationClaim, CLAIM_BASES, calibrationTable } from '../training/evidence/calibration.ts';
import type { CalibrationMessage, CalibrationPath, CalibrationTask } from './calibrationShare.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

const USUAL_SITTINGS = '200';
const MOST_SITTINGS = 100_000;
/** More processes than this want more memory than they save time. */
const MOST_PROCESSES = 4;
/** Sittings given to a process at a time. */
const PIECE: Readonly<Record<CalibrationPath, number>> = { 'by-table': 20, live: 1 };

/** `calibration`: random sittings, and how often what the evidence claimed was true. Exit code 1 where it is not honest. */
export async function calibration({ json, options }: CommandLine, output: Output): Promise<ExitCode> {
  const path: CalibrationPath = options['--live'] === undefined ? 'by-table' : 'live';
  const given = options['--live'] ?? options['--sittings'] ?? USUAL_SITTINGS;
  const count = /^\d{1,6}$/.test(given) ? Number(given) : 0;
  if (count < 1 || count > MOST_SITTINGS) {
    output.err(calibrationWords.badCount(path === 'live' ? '--live' : '--sittings', given));
    return 2;
  }
  const claims = await allSat(tasksFor(path, count), count, output);
  if (claims === null) return 2;
  const tables = CLAIM_BASES.map((basis) => calibrationTable(claims, basis));
  const holds = tables.every((table) => table.basis === 'confirming' || table.holds);
  if (json) writeJson(output, { path, holds, tables });
  else for (const line of calibrationLines(path, tables, holds)) output.out(line);
  return holds ? 0 : 1;
}

function tasksFor(path: CalibrationPath, count: number): readonly CalibrationTask[] {
  const piece = PIECE[path];
  return Array.from({ length: Math.ceil(count / piece) }, (_, t) => ({
    path,
    from: t * piece,
    to: Math.min((t + 1) * piece, count),
  }));
}

/** Every task sat, side by side as far as the machine allows, claims in the order of their numbers; null where one failed. */
async function allSat(
  tasks: readonly CalibrationTask[],
  count: number,
  output: Output,
): Promise<readonly CalibrationClaim[] | null> {
  const found: (readonly CalibrationClaim[])[] = [];
  let [next, done, broken] = [0, 0, false];
  const hand = async (): Promise<void> => {
    const child = fork(fileURLToPath(new URL('./calibrationShare.ts', import.meta.url)));
    for (let t = next++; t < tasks.length && !broken; t = next++) {
      const message = await sat(child, tasks[t] as CalibrationTask);
      if (message === null || message.kind === 'not-opened') {
        broken = true;
        output.err(message?.line ?? calibrationWords.childFailed);
        break;
      }
      found[t] = message.claims;
      done += message.claims.length;
      output.err(calibrationWords.sitting(done, count));
    }
    if (child.connected) child.disconnect();
  };
  const hands = Math.min(tasks.length, MOST_PROCESSES, availableParallelism());
  await Promise.all(Array.from({ length: hands }, hand));
  return broken ? null : found.flat();
}

/** One task sat by a child; null where the child ended early. */
function sat(child: ChildProcess, task: CalibrationTask): Promise<CalibrationMessage | null> {
  return new Promise((resolve) => {
    const end = (message: CalibrationMessage | null): void => {
      child.off('message', end);
      child.off('close', closed);
      resolve(message);
    };
    const closed = (): void => end(null);
    child.on('message', end);
    child.on('close', closed);
    if (child.connected) child.send(task);
    else closed();
  });
}
