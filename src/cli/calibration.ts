import { calibrationLines, calibrationWords } from '../text/cliCalibration.ts';
import { type CalibrationClaim, CLAIM_BASES, calibrationTable } from '../training/evidence/calibration.ts';
import type { CalibrationMessage, CalibrationPath, CalibrationTask } from './calibrationShare.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { sideBySide } from './sideBySide.ts';

const USUAL_SITTINGS = '200';
const MOST_SITTINGS = 100_000;
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

/** Every task sat, claims in the order of their numbers; null where one failed, which ends the work. */
async function allSat(
  tasks: readonly CalibrationTask[],
  count: number,
  output: Output,
): Promise<readonly CalibrationClaim[] | null> {
  let [done, broken] = [0, false];
  const script = new URL('./calibrationShare.ts', import.meta.url);
  const last = await sideBySide<CalibrationTask, CalibrationMessage>(script, tasks, {
    hear: () => undefined,
    isLast: () => true,
    ended: (message) => {
      if (message?.kind === 'sat') {
        done += message.claims.length;
        output.err(calibrationWords.sitting(done, count));
        return false;
      }
      if (!broken) output.err(message?.line ?? calibrationWords.childFailed);
      broken = true;
      return true;
    },
  });
  return broken ? null : last.flatMap((message) => (message?.kind === 'sat' ? message.claims : []));
}
