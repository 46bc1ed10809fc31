import { err, ok, type Result } from '../base/Result.ts';
import { atOnce } from '../base/steps.ts';
import { readText } from '../platform/node/textFiles.ts';
import { fileProblemLine, scenarioProblemLine } from '../text/cli.ts';
import { handoutWords } from '../text/cliHandout.ts';
import { describeJobFile } from '../text/describeJobFile.ts';
import { classKey, plainClassCode } from '../training/handout/classCode.ts';
import type { JobFile, JobFileProblem } from '../training/handout/JobFile.ts';
import { openSealedFile } from '../training/handout/openSealedFile.ts';
import { readJobFile } from '../training/handout/readJobFile.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';

/** Why a file of the command line is no job, in lines that are ready to be printed. */
export type NotHanded = { readonly code: string; readonly lines: readonly string[] };

/** Reads a scenario file or a sealed one, without opening the seal. */
export function readHanded(path: string): Result<JobFile, NotHanded> {
  const text = readText(path);
  if (!text.ok) return err({ code: text.error, lines: [fileProblemLine(path, text.error)] });
  const file = readJobFile(text.value, path);
  return file.ok ? file : err(notHanded(path, file.error));
}

/** Reads a scenario file or a sealed one and opens it. */
export function openHanded(path: string, classCode: string | undefined): Result<Scenario, NotHanded> {
  const file = readHanded(path);
  if (!file.ok) return file;
  if (file.value.kind === 'readable') return ok(file.value.scenario);
  const opened = openSealedFile(file.value.file, classCode ?? null);
  if (opened.ok) return ok(opened.value.scenario);
  if (opened.error.code === 'class-code-wanted')
    return err({ code: opened.error.code, lines: [`${path}: ${handoutWords.codeWanted}`] });
  return err(notHanded(path, opened.error));
}

function notHanded(path: string, problem: JobFileProblem): NotHanded {
  const lines =
    problem.code === 'scenario'
      ? problem.problems.map(scenarioProblemLine)
      : describeJobFile(problem).map((sentence) => `${path}: ${sentence}`);
  return { code: problem.code, lines };
}

/** The key that a class code of the command line gives for a scenario; half a second. Errors: a sentence. */
export function keyOfClass(classCode: string, scenario: Scenario): Result<string, string> {
  const plain = plainClassCode(classCode);
  if (plain === null) return err(handoutWords.badCode(classCode));
  return ok(atOnce(classKey(plain, scenario.contentHash)));
}
