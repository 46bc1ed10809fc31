import { canonicalJson, sha256Hex } from '../../base/hash.ts';
import { err, ok, type Result } from '../../base/Result.ts';
import { atOnce, type Steps } from '../../base/steps.ts';
import { toBase64 } from '../scenario/base64.ts';
import { applyKeystream, asciiBytes, asciiJson } from '../scenario/curtain.ts';
import { loadScenario } from '../scenario/loadScenario.ts';
import { classKey, plainClassCode } from './classCode.ts';
import { JOB_FILE_MARK, type JobFileProblem, MOST_SEATS, type SealedFile } from './JobFile.ts';

export interface SealOptions {
  /** As the instructor wrote it; left out, the file opens to anybody and is sealed by a curtain only. */
  readonly classCode?: string;
  /** How many seats the class has. Asked for on opening where the scenario has variants and the file a class code. */
  readonly seats?: number;
}

/** Mail programs leave lines of this length alone. */
const LINE = 76;
/** Seats of a class of which nobody said how many it has. */
export const USUAL_SEATS = 40;

/**
 * The text of a sealed file, from the text of a scenario file that is in order. The same text and options give the same
 * file. With a class code it takes half a second. Errors: every problem of the scenario file, or an unfit class code.
 */
export function sealedFileOf(
  scenarioText: string,
  fileName: string,
  options: SealOptions = {},
): Result<string, JobFileProblem> {
  return atOnce(sealedFileSteps(scenarioText, fileName, options));
}

/** `sealedFileOf` in steps of some milliseconds. */
export function* sealedFileSteps(
  scenarioText: string,
  fileName: string,
  { classCode, seats }: SealOptions = {},
): Steps<Result<string, JobFileProblem>> {
  const loaded = loadScenario(scenarioText, fileName);
  if (!loaded.ok) return err({ code: 'scenario', problems: loaded.error });
  const { title, contentHash } = loaded.value;
  const plain = classCode === undefined ? null : plainClassCode(classCode);
  if (classCode !== undefined && plain === null) return err({ code: 'class-code-unfit' });
  const bytes = asciiBytes(JSON.stringify(scenarioText));
  applyKeystream(bytes, plain === null ? contentHash : yield* classKey(plain, contentHash));
  const head = {
    [JOB_FILE_MARK]: 'sealed job',
    format: 1,
    title,
    contentHash,
    asks: {
      classCode: plain !== null,
      seats:
        plain !== null && loaded.value.variants !== undefined
          ? Math.min(Math.max(seats ?? USUAL_SEATS, 1), MOST_SEATS)
          : 0,
    },
    sealed: toBase64(bytes).match(new RegExp(`.{1,${LINE}}`, 'g')) ?? [],
  } as const;
  return ok(laidOut({ ...head, sum: sumOf(head) }));
}

/** SHA-256 over everything but itself. */
export function sumOf(file: Omit<SealedFile, 'sum'>): string {
  return sha256Hex(canonicalJson(file));
}

/** The one way in which a sealed file is written. */
export function laidOut(file: SealedFile): string {
  return `${asciiJson(JSON.stringify(file, null, 1))}\n`;
}
