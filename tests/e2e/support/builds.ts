import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { writeOfflineWorker } from '../../../src/platform/node/offline/writeOfflineWorker.ts';

/** What `vite build` left. */
export const BUILT = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', 'dist');

/** The first script of the page and the Spanish sentences: in another build they have other names, and so has all that asks for them. */
const CHANGED = /^(index|firstScreen|catalogue)-[\w-]{8}\.js$/;
const NAMED = /^(.+)-([\w-]{8})\.js$/;

/** A copy of the build as another version would be: its page says so, and some of its scripts have other names and contents. */
export async function anotherVersion(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'known-good-build-'));
  cpSync(BUILT, folder, { recursive: true });
  const scripts = join(folder, 'assets');
  const renamed = withWhoeverNames(scripts, (name) => CHANGED.test(name));
  const newName = (name: string): string =>
    name.replace(NAMED, (_, stem: string, hash: string) => `${stem}-${hash.slice(1)}_.js`);
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

/** Scripts that change, those whose text names one of them, and so on: a name with a hash is said of one content only. */
function withWhoeverNames(scripts: string, changes: (name: string) => boolean): readonly string[] {
  const all = readdirSync(scripts).filter((name) => NAMED.test(name));
  const changed = new Set(all.filter(changes));
  for (let before = -1; before !== changed.size; ) {
    before = changed.size;
    for (const name of all) {
      const text = readFileSync(join(scripts, name), 'utf8');
      if ([...changed].some((each) => text.includes(each))) changed.add(name);
    }
  }
  return [...changed];
}
