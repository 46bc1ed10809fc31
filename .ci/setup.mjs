// What `npm start` and `npm test` both need before anything else: the right Node and the packages. No imports from node_modules here.
import { existsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { run } from './processes.mjs';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

const OLDEST_NODE = 20;

/** One line saying what is wrong with this Node, or null. */
export function nodeComplaint(version = process.versions.node) {
  const major = Number.parseInt(version, 10);
  if (major >= OLDEST_NODE) return null;
  return `Known Good needs Node ${OLDEST_NODE} or newer; this is Node ${version}. Install a newer Node and run the command again.`;
}

/** Prints one line on stderr and ends the program. */
export function giveUp(line, exitCode) {
  process.stderr.write(`${line}\n`);
  process.exit(exitCode);
}

/** True when node_modules is missing, unfinished, or older than the lock file. */
export function packagesAreStale(root = ROOT) {
  const receipt = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(receipt)) return true;
  return statSync(join(root, 'package-lock.json')).mtimeMs > statSync(receipt).mtimeMs;
}

/** Installs exactly what the lock file says, if that has not been done. Ends the program with one line if it cannot. */
export async function ensurePackages() {
  if (!packagesAreStale()) return;
  process.stdout.write('Installing packages (npm ci) …\n');
  // npm started by npm knows its own script; otherwise the one on PATH is asked for (a .cmd on Windows needs a shell).
  const own = process.env.npm_execpath;
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const code =
    own && /\.c?js$/.test(own)
      ? await run(process.execPath, [own, ...args], { cwd: ROOT })
      : await run('npm', args, { cwd: ROOT, shell: process.platform === 'win32' });
  if (code === 0) return;
  giveUp(
    'The packages could not be installed: `npm ci` failed, see above. Check the network connection, then run the command again.',
    2,
  );
}
