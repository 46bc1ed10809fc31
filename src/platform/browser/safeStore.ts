import { memoryStore } from './memoryStore.ts';
import type { Store, StoreTrouble } from './StoredSitting.ts';
import { troubleOf } from './troubleOf.ts';

const OPENING_LIMIT_MS = 4000;
/** A database that gives no answer for so long gives none. Far beyond what a slow disk takes. */
const ANSWER_LIMIT_MS = 10_000;

/**
 * A store that never fails: everything is kept in memory, and on disk as far as the browser allows. Each kind of trouble is told once
 * through `onTrouble`; a later save that succeeds again is told as null.
 */
export async function openSafeStore<T extends { readonly key: string }>(
  open: (onLost: () => void) => Promise<Store<T>>,
  onTrouble: (trouble: StoreTrouble | null) => void,
): Promise<Store<T>> {
  const memory = memoryStore<T>();
  let disk: Store<T> | null = null;
  let told: StoreTrouble | null = null;
  const tell = (trouble: StoreTrouble | null): void => {
    if (told === trouble) return;
    told = trouble;
    onTrouble(trouble);
  };
  try {
    disk = await withinLimit(
      open(() => {
        disk = null;
        tell('store-newer');
      }),
      OPENING_LIMIT_MS,
    );
  } catch (error) {
    tell(error instanceof Error && error.name === 'Error' ? 'store-blocked' : troubleOf(error));
  }
  const onDisk = async <Got>(
    work: (store: Store<T>) => Promise<Got>,
    otherwise: () => Promise<Got>,
  ): Promise<Got> => {
    if (disk === null) return otherwise();
    try {
      return await withinLimit(work(disk), ANSWER_LIMIT_MS);
    } catch (error) {
      tell(troubleOf(error));
      return otherwise();
    }
  };
  return {
    get: async (key) =>
      (await memory.get(key)) ??
      onDisk(
        (store) => store.get(key),
        async () => undefined,
      ),
    put: async (thing) => {
      await memory.put(thing);
      await onDisk(
        async (store) => {
          await store.put(thing);
          tell(null);
        },
        async () => {},
      );
    },
    remove: async (key) => {
      await memory.remove(key);
      await onDisk(
        (store) => store.remove(key),
        async () => {},
      );
    },
    list: async () => {
      const stored = await onDisk(
        (store) => store.list(),
        async () => [],
      );
      return merged(stored, await memory.list());
    },
  };
}

function merged<T extends { readonly key: string }>(stored: readonly T[], memory: readonly T[]): T[] {
  const byKey = new Map(stored.map((thing) => [thing.key, thing]));
  for (const thing of memory) byKey.set(thing.key, thing);
  return [...byKey.values()];
}

function withinLimit<T>(work: Promise<T>, limitMs: number): Promise<T> {
  let timer: ReturnType<typeof setTimeout>;
  const limit = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error('the database does not answer')), limitMs);
  });
  return Promise.race([work, limit]).finally(() => clearTimeout(timer));
}
