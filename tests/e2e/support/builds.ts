import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeOfflineWorker } from '../../../src/platform/node/offline/writeOfflineWorker.ts';

/** What `vite build` left. */
export const BUILT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', 'dist');

/** The first script of the page and the Spanish sentences: in another build they have other names. */
const RENAMED = /^(index|firstScreen|catalogue)-([\w-]{8})\.js$/;

/** A copy of the build as another version would be: its page says so, and some of its scripts have other names and contents. */
export async function anotherVersion(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'known-good-build-'));
  cpSync(BUILT, folder, { recursive: true });
  const scripts = join(folder, 'assets');
  const renamed = readdirSync(scripts).filter((name) => RENAMED.test(name));
  const newName = (name: string): string =>
    name.replace(RENAMED, (_, stem: string, hash: string) => `${stem}-${hash.slice(1)}_.js`);
  for (const name of readdirSync(scripts).filter((each) => each.endsWith('.js'))) {
    writeFileSync(join(scripts, name), renamedIn(readFileSync(join(scripts, name), 'utf8')));
  }
  for (const name of renamed) {
    writeFileSync(join(scripts, name), `${readFileSync(join(scripts, name), 'utf8')}\n// another version\n`);
    renameSync(join(scripts, name), join(scripts, newName(name)));
  }
  const page = join(folder, 'index.html');
  writeFileSync(page, renamedIn(readFileSync(page, 'utf8')).replace('<html', '<html data-version="another"'));
  await writeOfflineWorker(folder);
  return folder;

  function renamedIn(text: string): string {
    return renamed.reduce((sofar, name) => sofar.replaceAll(name, newName(name)), text);
  }
}
