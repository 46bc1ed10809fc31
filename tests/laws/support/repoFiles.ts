import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

/** Folders that are made, not kept: what `.gitignore` names. For copies of the sources without a repository. */
const MADE = ['.git', 'node_modules', 'dist', 'test-results', 'playwright-report', '.cache'];

/** Every file that is kept or is about to be, as paths from the root with forward slashes, sorted. */
export function keptFiles(): readonly string[] {
  return (fromGit() ?? walk('')).sort();
}

/** Kept TypeScript files under the given folders or with the given names. */
export function sourceFiles(...roots: readonly string[]): readonly string[] {
  const isUnder = (path: string) => roots.some((root) => path === root || path.startsWith(`${root}/`));
  return keptFiles().filter((path) => /\.[mc]?tsx?$/.test(path) && isUnder(path));
}

export function readKept(path: string): string {
  return readFileSync(join(ROOT, path), 'utf8');
}

function fromGit(): string[] | null {
  try {
    const args = ['ls-files', '-z', '--cached', '--others', '--exclude-standard'];
    const listed = execFileSync('git', args, {
      cwd: ROOT,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return listed.split('\0').filter((path) => path !== '' && exists(path));
  } catch {
    return null;
  }
}

function walk(folder: string): string[] {
  return readdirSync(join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    if (MADE.includes(entry.name)) return [];
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    return entry.isDirectory() ? walk(path) : [path];
  });
}

function exists(path: string): boolean {
  return statSync(join(ROOT, path), { throwIfNoEntry: false })?.isFile() ?? false;
}
