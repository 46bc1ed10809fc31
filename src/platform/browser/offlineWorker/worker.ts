import { BuildKeeper } from './BuildKeeper.ts';
import type { KeptBuild, WordToWorker } from './KeptBuild.ts';

/** Put in when the build is finished. */
declare const __KEPT_BUILD__: KeptBuild;

// The types of a page and of a service worker cannot both be in one program (TypeScript, lib.dom and lib.webworker): what is
// used of the worker's is written down here.
interface Lasting extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface FetchEvent extends Lasting {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface WorkerScope {
  readonly registration: ServiceWorkerRegistration;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', heard: (event: Lasting) => void): void;
  addEventListener(kind: 'fetch', heard: (event: FetchEvent) => void): void;
  addEventListener(kind: 'message', heard: (event: Lasting & MessageEvent<WordToWorker>) => void): void;
}
const scope = self as unknown as WorkerScope;

const keeper = new BuildKeeper(__KEPT_BUILD__, {
  scope: scope.registration.scope,
  caches,
  fetch: (request) => fetch(request),
  anotherComes: () => scope.registration.installing !== null || scope.registration.waiting !== null,
  claims: async () => {
    if (!('locks' in navigator)) return null;
    const { held = [] } = await navigator.locks.query();
    return held.map(({ name }) => name ?? '');
  },
});

// It waits: only the user's word lets a new version in, see `message`.
scope.addEventListener('install', (event) => event.waitUntil(keeper.install()));

scope.addEventListener('activate', (event) =>
  event.waitUntil(keeper.tidy().then(() => scope.clients.claim())),
);

scope.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(scope.registration.scope)) return;
  event.respondWith(keeper.answer(request).then((kept) => kept ?? fetch(request)));
});

scope.addEventListener('message', (event) => {
  switch (event.data.kind) {
    case 'take-over':
      event.waitUntil(scope.skipWaiting());
      return;
    case 'page-open':
      event.waitUntil(keeper.mend().then(() => keeper.tidy()));
      return;
  }
});
