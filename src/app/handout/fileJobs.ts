import { type ReadonlySignal, signal } from '@preact/signals';
import { openTable } from '../../platform/browser/idbStore.ts';
import type { KeptFileJob } from '../../platform/browser/KeptFileJob.ts';
import type { Store, StoreTrouble } from '../../platform/browser/StoredSitting.ts';
import { openSafeStore } from '../../platform/browser/safeStore.ts';
import { addOwnWords } from '../../text/jobWords.ts';

/** The jobs of files that are kept on this device, and the board's list of them. */
export interface FileJobs {
  /** Null until the store has said what it keeps. */
  readonly all: ReadonlySignal<readonly KeptFileJob[] | null>;
  /** Puts a job on the board. Gives whether it is kept beyond this visit. */
  put(job: KeptFileJob): Promise<boolean>;
  remove(key: string): Promise<void>;
}

type OpenStore = (onLost: () => void) => Promise<Store<KeptFileJob>>;

/** A database of its own: what is handed out in class has nothing to do with the sittings. */
const openJobs: OpenStore = (onLost) => openTable('known-good-job-files', 'jobs', onLost);

export function createFileJobs(open: OpenStore = openJobs): FileJobs {
  const all = signal<readonly KeptFileJob[] | null>(null);
  // That nothing can be kept is told with the sittings; here it is said of the one job that was opened.
  let trouble: StoreTrouble | null = null;
  const opened = openSafeStore(open, (found) => {
    trouble = found;
  });
  const refresh = async (): Promise<void> => {
    const kept = (await (await opened).list()).filter(isWhole);
    for (const { card } of kept) addOwnWords(card.words);
    all.value = [...kept].sort((one, other) => one.openedAtMs - other.openedAtMs);
  };
  void refresh();
  return {
    all,
    put: async (job) => {
      await (await opened).put(job);
      await refresh();
      return trouble === null;
    },
    remove: async (key) => {
      await (await opened).remove(key);
      await refresh();
    },
  };
}

/** What is kept may be of another version; what the board shows must be there. */
function isWhole({ key, card, sealed }: Partial<KeptFileJob>): boolean {
  return (
    typeof key === 'string' &&
    card?.id === key &&
    typeof card.title === 'string' &&
    typeof card.summary === 'string' &&
    Array.isArray(card.aims) &&
    typeof sealed?.sealed === 'string' &&
    typeof sealed.card?.contentHash === 'string'
  );
}
