import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { err, ok, type Result } from '../../base/Result.ts';

export type FileProblem =
  | 'file-not-found'
  | 'file-not-readable'
  | 'file-not-text'
  | 'file-too-large'
  | 'not-a-folder';

/** Nothing that this program reads is larger. */
const MAX_BYTES = 16 * 1024 * 1024;

/** Reads a UTF-8 text file. */
export function readText(path: string): Result<string, FileProblem> {
  try {
    const file = statSync(path);
    // A device or a pipe says that it has no size, and need never end.
    if (!file.isFile()) return err('file-not-readable');
    if (file.size > MAX_BYTES) return err('file-too-large');
    const bytes = readFileSync(path);
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch (cause) {
    if (cause instanceof TypeError) return err('file-not-text');
    const code = cause instanceof Error && 'code' in cause ? cause.code : null;
    return err(code === 'ENOENT' ? 'file-not-found' : 'file-not-readable');
  }
}

/** Names of the files of a folder with this ending, sorted, with the folder before them. */
export function filesOf(folder: string, ending: string): Result<readonly string[], FileProblem> {
  try {
    const names = readdirSync(folder).filter((name) => name.endsWith(ending));
    return ok(names.sort().map((name) => join(folder, name)));
  } catch {
    return err('not-a-folder');
  }
}

/** Writes a text file, making its folder when it is missing. */
export function writeText(path: string, text: string): Result<void, FileProblem> {
  try {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    return ok(undefined);
  } catch {
    return err('file-not-readable');
  }
}
