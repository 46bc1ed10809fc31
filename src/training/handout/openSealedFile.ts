import { err, ok, type Result } from '../../base/Result.ts';
import { atOnce, type Steps } from '../../base/steps.ts';
import { fromBase64 } from '../scenario/base64.ts';
import { applyKeystream, asciiText } from '../scenario/curtain.ts';
import { loadScenario } from '../scenario/loadScenario.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { classKey, plainClassCode } from './classCode.ts';
import type { JobFileProblem, SealedFile } from './JobFile.ts';

export interface OpenedFile {
  readonly scenario: Scenario;
  /** The text of the scenario file within. */
  readonly text: string;
  /** What the class code gave; null where the file asks for none. */
  readonly key: string | null;
}

/** Opens a sealed file. Errors: a class code that is wanted, unfit or wrong; or a file that is not what it says. */
export function openSealedFile(
  file: SealedFile,
  classCode: string | null = null,
): Result<OpenedFile, JobFileProblem> {
  return atOnce(openSealedFileSteps(file, classCode));
}

/** `openSealedFile` in steps of some milliseconds: with a class code it takes half a second. */
export function* openSealedFileSteps(
  file: SealedFile,
  classCode: string | null,
): Steps<Result<OpenedFile, JobFileProblem>> {
  let key = file.contentHash;
  if (file.asks.classCode) {
    if (classCode === null) return err({ code: 'class-code-wanted' });
    const plain = plainClassCode(classCode);
    if (plain === null) return err({ code: 'class-code-unfit' });
    key = yield* classKey(plain, file.contentHash);
  }
  const bytes = fromBase64(file.sealed.join(''));
  if (bytes === null) return err({ code: 'job-file-damaged' });
  applyKeystream(bytes, key);
  // Under a wrong key no JSON comes out: the odds against it are those of guessing the key.
  const text = parsedText(asciiText(bytes));
  if (text === null) return err({ code: file.asks.classCode ? 'class-code-wrong' : 'job-file-not-its-own' });
  const loaded = loadScenario(text, file.title);
  if (!loaded.ok) return err({ code: 'scenario', problems: loaded.error });
  const scenario = loaded.value;
  const seated = file.asks.seats > 0;
  const asWritten =
    scenario.contentHash === file.contentHash &&
    scenario.title === file.title &&
    seated === (file.asks.classCode && scenario.variants !== undefined);
  return asWritten
    ? ok({ scenario, text, key: file.asks.classCode ? key : null })
    : err({ code: 'job-file-not-its-own' });
}

function parsedText(json: string): string | null {
  try {
    const text: unknown = JSON.parse(json);
    return typeof text === 'string' ? text : null;
  } catch {
    return null;
  }
}
