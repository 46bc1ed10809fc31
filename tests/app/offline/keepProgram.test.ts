import { describe, expect, it } from 'vitest';
import { createEdition } from '../../../src/app/offline/createEdition.ts';
import { keepProgram, type ProgramWorld } from '../../../src/app/offline/keepProgram.ts';

type State = 'installing' | 'installed' | 'activating' | 'activated' | 'redundant';

/** A worker that is moved from state to state by the test. */
class FakeWorker extends EventTarget {
  readonly told: string[] = [];
  state: State = 'installing';
  postMessage(word: { kind: string }): void {
    this.told.push(word.kind);
  }
  become(state: State): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeRegistration extends EventTarget {
  installing: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  active: FakeWorker | null = null;
  updates = 0;
  async update(): Promise<void> {
    this.updates += 1;
  }
  /** A new worker is found. */
  found(): FakeWorker {
    const worker = new FakeWorker();
    this.installing = worker;
    this.dispatchEvent(new Event('updatefound'));
    return worker;
  }
  /** It has everything: it serves at once when it is the first, else it waits. */
  arrived(worker: FakeWorker): void {
    this.installing = null;
    if (this.active === null) this.active = worker;
    else this.waiting = worker;
    worker.become(this.waiting === worker ? 'installed' : 'activated');
  }
}

class FakeContainer extends EventTarget {
  controller: FakeWorker | null = null;
  refuse = false;
  constructor(readonly registration: FakeRegistration) {
    super();
  }
  async register(): Promise<FakeRegistration> {
    if (this.refuse) throw new DOMException('denied', 'SecurityError');
    return this.registration;
  }
  change(to: FakeWorker): void {
    this.controller = to;
    this.dispatchEvent(new Event('controllerchange'));
  }
}

async function opened(before: (registration: FakeRegistration, container: FakeContainer) => void = () => {}) {
  const registration = new FakeRegistration();
  const container = new FakeContainer(registration);
  before(registration, container);
  const edition = createEdition();
  const page = { reloads: 0, onBoard: true, saved: true };
  const world: ProgramWorld = {
    container: container as unknown as ServiceWorkerContainer,
    locks: null,
    scope: 'https://shop.test/bench/',
    pageScript: 'assets/index-aaaaaaaa.js',
    onBoard: () => page.onBoard,
    allSaved: async () => page.saved,
    reload: () => {
      page.reloads += 1;
    },
  };
  const look = await keepProgram(edition, world);
  return { registration, container, edition, page, look };
}

/** A device that has the program already, with a newer one that waits. */
async function withNewer() {
  const all = await opened((registration, container) => {
    registration.active = new FakeWorker();
    container.controller = registration.active;
  });
  const newer = all.registration.found();
  all.registration.arrived(newer);
  return { ...all, newer };
}

const turns = () => new Promise((done) => setTimeout(done, 0));

describe('the program on the device', () => {
  it('is kept once its first worker has everything, and that is no new version', async () => {
    const { registration, container, edition, page } = await opened();
    expect(edition.kept.value).toBe('unknown');
    const first = registration.found();
    registration.arrived(first);
    container.change(first);
    expect(edition.kept.value).toBe('kept');
    expect(edition.newer.value).toBeNull();
    expect(page.reloads).toBe(0);
  });

  it('is not kept where the browser refuses, has no such workers, or finds no room', async () => {
    const refused = await opened((_, container) => {
      container.refuse = true;
    });
    expect(refused.edition.kept.value).toBe('not-kept');

    const edition = createEdition();
    await keepProgram(edition, { container: null } as ProgramWorld);
    expect(edition.kept.value).toBe('not-kept');

    const full = await opened();
    const worker = full.registration.found();
    full.registration.installing = null;
    worker.become('redundant');
    expect(full.edition.kept.value).toBe('not-kept');
  });

  it('stays kept when a newer one cannot be fetched', async () => {
    const { registration, edition } = await opened((to) => {
      to.active = new FakeWorker();
    });
    const newer = registration.found();
    registration.installing = null;
    newer.become('redundant');
    expect(edition.kept.value).toBe('kept');
    expect(edition.newer.value).toBeNull();
  });

  it('says that it is open, so that older ones can go', async () => {
    const { registration } = await opened((to) => {
      to.active = new FakeWorker();
    });
    expect(registration.active?.told).toEqual(['page-open']);
  });
});

describe('a newer version', () => {
  it('is offered when it has everything, and changes nothing by itself', async () => {
    const { edition, page, newer } = await withNewer();
    await turns();
    expect(edition.newer.value).toBe('offered');
    expect(newer.told).toEqual([]);
    expect(page.reloads).toBe(0);
  });

  it('is offered when it was there before the page was opened', async () => {
    const { edition } = await opened((to) => {
      to.active = new FakeWorker();
      to.waiting = new FakeWorker();
    });
    expect(edition.newer.value).toBe('offered');
  });

  it('comes in when it is asked for, and the page is loaded again once it has', async () => {
    const { container, edition, page, newer } = await withNewer();
    edition.takeNewer();
    await turns();
    expect(newer.told).toEqual(['take-over']);
    expect(page.reloads).toBe(0);
    container.change(newer);
    expect(page.reloads).toBe(1);
  });

  it('is not asked in while a job is open anywhere', async () => {
    const { edition, page, newer } = await withNewer();
    page.saved = false;
    edition.takeNewer();
    await turns();
    expect(newer.told).toEqual([]);
    expect(edition.newer.value).toBe('job-elsewhere');
    page.saved = true;
    edition.takeNewer();
    await turns();
    expect(newer.told).toEqual(['take-over']);
  });

  it('does not load a page again whose user went on to a job meanwhile', async () => {
    const { container, edition, page, newer } = await withNewer();
    edition.takeNewer();
    await turns();
    page.onBoard = false;
    container.change(newer);
    expect(page.reloads).toBe(0);
    expect(edition.newer.value).toBe('taken-elsewhere');
  });

  it('put in by another page is told, and this one is loaded again only when asked', async () => {
    const { container, edition, page, newer } = await withNewer();
    container.change(newer);
    expect(page.reloads).toBe(0);
    expect(edition.newer.value).toBe('taken-elsewhere');
    edition.takeNewer();
    expect(page.reloads).toBe(1);
  });

  it('is looked for when the page asks', async () => {
    const { registration, look } = await opened();
    look();
    expect(registration.updates).toBe(1);
  });
});
