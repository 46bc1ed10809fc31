import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { ICONS, mimeOf } from './icons.ts';
import { type ProgramCard, webManifest } from './webManifest.ts';
import { OFFLINE_WORKER, writeOfflineWorker } from './writeOfflineWorker.ts';

const MANIFEST = 'manifest.webmanifest';
const ICON_FOLDER = join(import.meta.dirname, '..', '..', '..', '..', 'assets', 'icons');

/**
 * What makes the page a program of the device that works without the network: manifest, icons, and the worker that keeps the
 * build. While one develops there is no worker, and one that an earlier build left on the same port takes itself off.
 */
export function offlineProgram(card: ProgramCard): Plugin {
  const files = new Map<string, { readonly mime: string; readonly content: Uint8Array | string }>([
    [MANIFEST, { mime: 'application/manifest+json', content: webManifest(card) }],
    ...ICONS.map(
      (icon) =>
        [
          `icons/${icon.file}`,
          { mime: mimeOf(icon), content: readFileSync(join(ICON_FOLDER, icon.file)) },
        ] as const,
    ),
  ]);
  let builds = false;
  return {
    name: 'offline-program',
    configResolved(config) {
      builds = config.command === 'build';
    },
    transformIndexHtml: () => [
      { tag: 'meta', attrs: { name: 'theme-color', content: card.colour }, injectTo: 'head' },
      { tag: 'link', attrs: { rel: 'manifest', href: `./${MANIFEST}` }, injectTo: 'head' },
      {
        tag: 'link',
        attrs: { rel: 'icon', type: 'image/svg+xml', href: './icons/icon.svg' },
        injectTo: 'head',
      },
      {
        tag: 'link',
        attrs: { rel: 'apple-touch-icon', href: './icons/icon-maskable-192.png' },
        injectTo: 'head',
      },
    ],
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const path = (request.url ?? '').split('?')[0]?.replace(/^\//, '') ?? '';
        const file =
          path === OFFLINE_WORKER ? { mime: 'text/javascript', content: GOING_WORKER } : files.get(path);
        if (file === undefined) return next();
        response.setHeader('Content-Type', file.mime);
        response.end(file.content);
      });
    },
    generateBundle() {
      for (const [fileName, { content }] of files) {
        this.emitFile({ type: 'asset', fileName, source: content });
      }
    },
    async writeBundle({ dir }) {
      if (builds && dir !== undefined) await writeOfflineWorker(dir);
    },
  };
}

/** The worker of a server that serves sources: it takes the place of an earlier one and goes, with all that was kept. */
const GOING_WORKER = `
self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil((async () => {
  for (const name of await caches.keys()) if (name.startsWith('known-good:')) await caches.delete(name);
  await self.registration.unregister();
  for (const page of await self.clients.matchAll({ type: 'window' })) await page.navigate(page.url);
})()));
`;
