import { computed, type Signal, signal } from '@preact/signals';
import type { SittingStore } from '../platform/browser/StoredSitting.ts';
import type { Settings } from '../platform/browser/settings.ts';
import { addOwnWords } from '../text/jobWords.ts';
import type { BoardCard } from '../training/scenario/BoardCard.ts';
import type { FileJob, KeptSitting, Shop, Trouble } from '../ui/panels/Shop.ts';
import { exportStored } from './exportStored.ts';
import type { FileJobs } from './handout/fileJobs.ts';
import { holdJob } from './holdJob.ts';
import { parseRoute, type Route, routeHash } from './Route.ts';

/** The shop with what only the composition root needs of it. */
export interface AppShop extends Shop {
  readonly route: Signal<Route>;
  readonly store: SittingStore;
  /** Reads the list of kept sittings again. */
  refresh(): Promise<void>;
  readonly jobs: FileJobs;
  /** Files that are to be opened, or a job of one that is to go; null where no dialog is asked for. */
  readonly handout: Signal<Handout | null>;
  /** The dialogs that answer `handout` are on this page, with their words. */
  readonly readerFetched: Signal<boolean>;
}

export type Handout =
  | { readonly kind: 'open'; readonly files: readonly File[] }
  | { readonly kind: 'remove'; readonly job: FileJob };

export function createShop(
  cards: readonly BoardCard[],
  store: SittingStore,
  settings: { value: Settings; peek(): Settings } & Shop['settings'],
  trouble: { value: Trouble | null } & Shop['trouble'],
  jobs: FileJobs,
): AppShop {
  for (const { words } of cards) addOwnWords(words);
  const kept = signal<readonly KeptSitting[]>([]);
  const handout = signal<Handout | null>(null);
  const route = signal<Route>(parseRoute(location.hash));
  window.addEventListener('hashchange', () => {
    route.value = parseRoute(location.hash);
    // A dialog of the board stays on the board.
    handout.value = null;
  });
  const go = (to: Route): void => {
    location.hash = routeHash(to);
  };
  const refresh = async (): Promise<void> => {
    const all = await store.list();
    kept.value = all.map(({ record: _record, ...rest }) => rest);
  };
  /** Makes room for a new sitting: the old one keeps its record under a key of its own. */
  const putAway = async (scenario: string): Promise<void> => {
    const old = await store.get(scenario);
    if (old === undefined) return;
    await store.put({
      ...old,
      key: `${scenario}@${old.savedAtMs}`,
      state: old.state === 'open' ? 'put-away' : old.state,
    });
    await store.remove(scenario);
    await refresh();
  };
  const readerFetched = signal(false);
  const shop: AppShop = {
    cards: [...cards].sort((a, b) => a.level - b.level || a.minutes - b.minutes),
    kept,
    settings,
    trouble,
    route,
    store,
    refresh,
    toBoard: () => go({ screen: 'board' }),
    toJob: (scenario) => {
      const finished = kept.value.some((each) => each.key === scenario && each.state === 'finished');
      void (finished ? putAway(scenario) : Promise.resolve()).then(() => go({ screen: 'job', scenario }));
    },
    startAnew: async (scenario) => {
      const letGo = await holdJob(scenario);
      if (letGo === null) {
        trouble.value = { key: 'troubles.open-elsewhere', offers: [] };
        return;
      }
      await putAway(scenario);
      letGo();
      go({ screen: 'job', scenario });
    },
    toDebrief: ({ key, scenario }) => go({ screen: 'debrief', scenario, kept: key }),
    exportKept: (key) => {
      void store.get(key).then((sitting) => {
        if (sitting !== undefined) exportStored(sitting);
      });
    },
    jobs,
    handout,
    fileJobs: jobs.all,
    readerFetched,
    filesComing: computed(() =>
      handout.value?.kind === 'open' && !readerFetched.value
        ? handout.value.files.map(({ name }) => name)
        : [],
    ),
    openFiles: (files) => {
      if (files.length === 0) return;
      const before = handout.peek();
      // Until their reader is there nobody has taken the ones before: they wait together.
      const waiting = before?.kind === 'open' && !readerFetched.peek() ? before.files : [];
      handout.value = { kind: 'open', files: [...waiting, ...files] };
    },
    askToRemove: (job) => {
      handout.value = { kind: 'remove', job };
    },
    removeFileJob: async (key, records) => {
      const { removeFileJob } = await import('./handout/removeFileJob.ts');
      const removed = await removeFileJob(shop, jobs, key, records);
      if (!removed) trouble.value = { key: 'troubles.open-elsewhere', offers: [] };
    },
  };
  return shop;
}
