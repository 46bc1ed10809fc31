// The build, and whether it is needed.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './processes.mjs';
import { ROOT } from './setup.mjs';

export const VITE = join(ROOT, 'node_modules', 'vite', 'bin', 'vite.js');

const SOURCES = [
  'src',
  'assets',
  'scenarios',
  'index.html',
  'vite.config.ts',
  'tsconfig.json',
  'package.json',
  'package-lock.json',
];

/** True when something in the sources is newer than the last finished build. Folders count, so a deleted file shows too. */
export function buildIsStale(root = ROOT) {
  const page = join(root, 'dist', 'index.html');
  if (!existsSync(page)) return true;
  const built = statSync(page).mtimeMs;
  return SOURCES.some((name) => existsSync(join(root, name)) && newestIn(join(root, name)) > built);
}

/** Builds into dist. Gives the exit code. */
export function build() {
  return run(process.execPath, [VITE, 'build'], { cwd: ROOT });
}

function newestIn(path) {
  const here = statSync(path);
  if (!here.isDirectory()) return here.mtimeMs;
  return readdirSync(path).reduce(
    (newest, name) => Math.max(newest, newestIn(join(path, name))),
    here.mtimeMs,
  );
}
