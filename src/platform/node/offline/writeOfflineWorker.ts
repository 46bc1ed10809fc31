import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { filesOfBuild, versionOf } from './filesOfBuild.ts';

/** The worker lies beside the page: a worker answers for its own folder and what is below it. */
export const OFFLINE_WORKER = 'offline-worker.js';

const SOURCE = join(import.meta.dirname, '..', '..', 'browser', 'offlineWorker', 'worker.ts');

/**
 * Writes the worker that keeps a finished build for work without the network. It holds the list of the build's files, so it is
 * written last, and a change in any of them makes another worker, which is how a browser notices a new version.
 */
export async function writeOfflineWorker(folder: string): Promise<void> {
  const files = filesOfBuild(folder, [OFFLINE_WORKER]);
  const kept = { version: versionOf(files), page: pageScript(folder), files };
  await build({
    configFile: false,
    logLevel: 'warn',
    define: { __KEPT_BUILD__: JSON.stringify(kept) },
    build: {
      target: 'es2022',
      outDir: folder,
      emptyOutDir: false,
      copyPublicDir: false,
      reportCompressedSize: false,
      lib: { entry: SOURCE, formats: ['iife'], name: 'worker', fileName: () => OFFLINE_WORKER },
    },
  });
}

/** The script the page starts with: its name changes whenever any script of the program does. */
function pageScript(folder: string): string {
  const html = readFileSync(join(folder, 'index.html'), 'utf8');
  const [, script] = /<script type="module"[^>]* src="\.\/([^"]+)"/.exec(html) ?? [];
  if (script === undefined) throw new Error('index.html of the build names no script');
  return script;
}
