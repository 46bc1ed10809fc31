import { err, ok, type Result } from '../../base/Result.ts';
import { loadScenario } from '../scenario/loadScenario.ts';
import { utf8Bytes } from '../scenario/readYaml.ts';
import {
  JOB_FILE_MARK,
  type JobFile,
  type JobFileProblem,
  MAX_JOB_FILE_BYTES,
  type SealedFile,
  sealedFileSchema,
} from './JobFile.ts';
import { laidOut, sumOf } from './sealedFileOf.ts';

/**
 * Reads a file that was handed out: a scenario file in order, or a sealed file that came whole. A mark of byte order,
 * line ends of two characters and blanks that a mail program added or took do no harm. Nothing of a sealed file is
 * decrypted here. Errors: the one thing that is wrong with it; of a scenario file everything at once.
 */
export function readJobFile(given: string, name: string): Result<JobFile, JobFileProblem> {
  const bytes = utf8Bytes(given);
  if (bytes > MAX_JOB_FILE_BYTES)
    return err({ code: 'job-file-too-large', bytes, limit: MAX_JOB_FILE_BYTES });
  if (given.trim() === '') return err({ code: 'job-file-empty' });
  if (isOfSealedFile(given)) {
    const file = sealedFile(given);
    return file.ok ? ok({ kind: 'sealed', name, file: file.value }) : file;
  }
  const loaded = loadScenario(given, name);
  if (!loaded.ok) return err({ code: 'scenario', problems: loaded.error });
  return ok({ kind: 'readable', name, text: given, scenario: loaded.value });
}

/** A scenario file may begin with a brace as well, but not with our mark. */
function isOfSealedFile(given: string): boolean {
  return new RegExp(`^\\s*\\{\\s*"${JOB_FILE_MARK}"`).test(given.slice(0, 2000));
}

function sealedFile(given: string): Result<SealedFile, JobFileProblem> {
  let json: unknown;
  try {
    // Blanks of other kinds than JSON knows come with copying out of a mail.
    json = JSON.parse(given.replaceAll(/[\ufeff\u00a0]/g, ' '));
  } catch {
    return err({ code: 'job-file-damaged' });
  }
  const format = (json as { readonly format?: unknown } | null)?.format;
  if (typeof format === 'number' && Number.isInteger(format) && format > 1)
    return err({ code: 'job-file-newer' });
  const parsed = sealedFileSchema.safeParse(json);
  if (!parsed.success) return err({ code: 'job-file-damaged' });
  const { sum, ...rest } = parsed.data;
  // Written in another way than ours it is not as it was handed out, though a reader of JSON takes it for the same.
  if (sumOf(rest) !== sum || tight(laidOut(parsed.data)) !== tight(given))
    return err({ code: 'job-file-damaged' });
  return ok(parsed.data);
}

/** Without its blanks. */
function tight(text: string): string {
  return text.replaceAll(/[\s\ufeff]/g, '');
}
