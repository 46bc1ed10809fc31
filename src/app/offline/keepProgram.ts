import { pageClaim, type WordToWorker } from '../../platform/browser/offlineWorker/KeptBuild.ts';
import type { OpenEdition } from './createEdition.ts';

/** The browser and the page as the keeping of the program needs them. */
export interface ProgramWorld {
  /** Null where the browser lets no page keep its program: private windows of some. */
  readonly container: ServiceWorkerContainer | null;
  readonly locks: LockManager | null;
  /** Address of the folder that the program lies in. */
  readonly scope: string;
  /** The script this page started with, from that folder. */
  readonly pageScript: string;
  onBoard(): boolean;
  /** Settles when everything that is open is saved and let go. Gives false when a job is open in another page. */
  allSaved(): Promise<boolean>;
  reload(): void;
}

const WORKER = 'offline-worker.js';
/** The versions change places within this, or something is in the way and it is offered again. */
const CHANGE_LIMIT_MS = 10_000;

/** Has the device keep the program, and tells of a newer version once it is there in full. Gives the way to look for one now. */
export async function keepProgram(edition: OpenEdition, world: ProgramWorld): Promise<() => void> {
  const { container, scope } = world;
  const nothing = (): void => {};
  if (container === null) {
    edition.kept.value = 'not-kept';
    return nothing;
  }
  holdPageClaim(world);
  let registration: ServiceWorkerRegistration | undefined;
  try {
    registration = await container.register(new URL(WORKER, scope), { scope, updateViaCache: 'none' });
  } catch {
    // Told below.
  }
  // Some that let no page keep its program say so by giving nothing.
  if (registration === undefined) {
    edition.kept.value = 'not-kept';
    return nothing;
  }
  const kept = registration;
  watchArrivals(kept, edition);
  watchChange(container, kept, edition, world);
  return () => void kept.update().catch(nothing);
}

/** As long as this page is open nobody throws away the build it came from. */
function holdPageClaim({ locks, scope, pageScript }: ProgramWorld): void {
  void locks
    ?.request(pageClaim(scope, pageScript), { mode: 'shared' }, () => new Promise<void>(() => {}))
    .catch(() => {});
}

function tell(worker: ServiceWorker | null, word: WordToWorker): void {
  worker?.postMessage(word);
}

/** A worker that has everything is either the first, which serves at once, or a newer one, which waits. */
function watchArrivals(registration: ServiceWorkerRegistration, edition: OpenEdition): void {
  const look = (): void => {
    if (registration.active !== null) edition.kept.value = 'kept';
    if (registration.active !== null && registration.waiting !== null) edition.newer.value = 'offered';
  };
  const follow = (worker: ServiceWorker | null): void => {
    worker?.addEventListener('statechange', () => {
      // It could not be fetched whole, or there was no room for it.
      if (worker.state === 'redundant' && registration.active === null) edition.kept.value = 'not-kept';
      look();
    });
  };
  registration.addEventListener('updatefound', () => follow(registration.installing));
  follow(registration.installing);
  look();
  tell(registration.active, { kind: 'page-open' });
}

/** Only the user's word changes the version, and only the page where it was given is loaded again. */
function watchChange(
  container: ServiceWorkerContainer,
  registration: ServiceWorkerRegistration,
  edition: OpenEdition,
  world: ProgramWorld,
): void {
  let controlled = container.controller !== null;
  let asked = false;
  container.addEventListener('controllerchange', () => {
    const first = !controlled;
    controlled = true;
    if (asked && world.onBoard()) world.reload();
    else if (!first || asked) edition.newer.value = 'taken-elsewhere';
    asked = false;
  });
  edition.take = () => {
    if (edition.newer.peek() === 'taken-elsewhere') {
      world.reload();
      return;
    }
    if (edition.newer.peek() === 'taking') return;
    edition.newer.value = 'taking';
    void world.allSaved().then((saved) => {
      if (!saved) {
        edition.newer.value = 'job-elsewhere';
        return;
      }
      asked = true;
      tell(registration.waiting, { kind: 'take-over' });
      setTimeout(() => {
        if (!asked) return;
        asked = false;
        edition.newer.value = registration.waiting === null ? 'taken-elsewhere' : 'offered';
      }, CHANGE_LIMIT_MS);
    });
  };
}
