import { z } from 'zod';
import { PLAIN_TEXT } from '../scenario/hiddenCharacters.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { ScenarioProblem } from '../scenario/ScenarioProblem.ts';

/** Of a job file's name. */
export const JOB_FILE_ENDING = '.job.json';

/** A scenario file is a quarter of a mebibyte at most; sealed, a third more, and its head. */
export const MAX_JOB_FILE_BYTES = 384 * 1024;

export const MOST_SEATS = 200;

/** By this first key a job file is known. */
export const JOB_FILE_MARK = 'known-good';

/** A sealed scenario as it is handed out: one JSON object, ASCII alone, in lines that no mail program breaks. */
export const sealedFileSchema = z.strictObject({
  [JOB_FILE_MARK]: z.literal('sealed job'),
  format: z.literal(1),
  /** What is said of it before it is opened. */
  title: z.string().min(1).max(80).regex(PLAIN_TEXT),
  /** Of the scenario within; a record of it repeats it. */
  contentHash: z.string().regex(/^[0-9a-f]{64}$/),
  /** What must be given before it opens: with a class code it is really encrypted. */
  asks: z.strictObject({
    classCode: z.boolean(),
    /** How many seats the class has, where every seat gets a truck of its own; 0 where none is asked for. */
    seats: z.number().int().min(0).max(MOST_SEATS),
  }),
  /** The text of the scenario file, encrypted, base 64 in lines. */
  sealed: z.array(z.string().min(1).max(100)).min(1).max(8000),
  /** SHA-256 over the canonical JSON of all the rest: tells damage on the way. */
  sum: z.string().regex(/^[0-9a-f]{64}$/),
});
export type SealedFile = z.infer<typeof sealedFileSchema>;

/** A file that a learner may be handed: a scenario file that anybody can read, or a sealed one. */
export type JobFile =
  | {
      readonly kind: 'readable';
      readonly name: string;
      readonly text: string;
      readonly scenario: Scenario;
    }
  | { readonly kind: 'sealed'; readonly name: string; readonly file: SealedFile };

/** Why a file handed out cannot be used. `scenario` is a scenario file that is not in order: each problem has its place. */
export type JobFileProblem =
  | { readonly code: 'job-file-too-large'; readonly bytes: number; readonly limit: number }
  | {
      readonly code:
        | 'job-file-empty'
        | 'job-file-not-text'
        /** Bytes changed, were lost or were added on the way. */
        | 'job-file-damaged'
        | 'job-file-newer'
        /** It opens, but not to what it says it holds: it was put together by hand. */
        | 'job-file-not-its-own';
    }
  | { readonly code: 'class-code-wanted' | 'class-code-unfit' | 'class-code-wrong' }
  | { readonly code: 'scenario'; readonly problems: readonly ScenarioProblem[] };
