import { join } from 'node:path';
import type { Plugin } from 'vite';

const WORKER = 'virtual:worker/';

/**
 * Workers as entries of the page's own build: `import { workerUrl } from 'virtual:worker/src/…/someWorker.ts'`. The bundler's
 * own way builds each worker by itself, with a second copy of the whole simulation in it; so built, page and worker
 * fetch one and the same file.
 */
export function sharedWorkers(root: string): Plugin {
  let building = false;
  return {
    name: 'shared-workers',
    configResolved: ({ command }) => {
      building = command === 'build';
    },
    resolveId: (id) => (id.startsWith(WORKER) ? `\0${id}` : undefined),
    load(id) {
      if (!id.startsWith(`\0${WORKER}`)) return;
      const path = id.slice(WORKER.length + 1);
      if (!building) return `export const workerUrl = ${JSON.stringify(`/${path}?worker_file&type=module`)};`;
      const name = path.split('/').at(-1)?.replace(/\.ts$/, '') ?? 'worker';
      const file = this.emitFile({ type: 'chunk', id: join(root, path), name, preserveSignature: 'strict' });
      return `export const workerUrl = import.meta.ROLLUP_FILE_URL_${file};`;
    },
  };
}
