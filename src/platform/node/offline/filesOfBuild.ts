import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One file of the build: its path with forward slashes, and its content's hash in the form of Subresource Integrity. */
export type BuiltFile = readonly [path: string, integrity: string];

/** Every file under `folder` but those named, sorted by path. */
export function filesOfBuild(folder: string, without: readonly string[] = []): readonly BuiltFile[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((path) => path.slice(folder.length + 1).replaceAll('\\', '/'))
    .filter((path) => !without.includes(path))
    .sort()
    .map((path) => [path, integrityOf(readFileSync(join(folder, path)))]);
}

function integrityOf(content: Uint8Array): string {
  return `sha256-${createHash('sha256').update(content).digest('base64')}`;
}

/** One short name for all of it: another file, or another content, is another version. */
export function versionOf(files: readonly BuiltFile[]): string {
  return createHash('sha256').update(JSON.stringify(files)).digest('hex').slice(0, 16);
}
