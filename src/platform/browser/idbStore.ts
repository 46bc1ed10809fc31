import { type IDBPDatabase, openDB } from 'idb';
import type { SittingStore, Store, StoredSitting } from './StoredSitting.ts';

const VERSION = 1;

/** Sittings of this browser. */
export function openIdbStore(onLost: () => void): Promise<SittingStore> {
  return openTable<StoredSitting>('known-good', 'sittings', onLost);
}

/**
 * One table of things in a database of its own in IndexedDB. Rejects when the browser gives no database: private window, storage
 * switched off, or a newer version's page holding it. `onLost` says that such a page took it over later; a database that the browser
 * itself closed, as when a user clears what pages have stored, is opened again with the next call.
 */
export async function openTable<T extends { readonly key: string }>(
  name: string,
  table: string,
  onLost: () => void,
): Promise<Store<T>> {
  if (typeof indexedDB === 'undefined') throw new DOMException('no IndexedDB here', 'SecurityError');
  let opened: Promise<IDBPDatabase> | null = null;
  const open = async (): Promise<IDBPDatabase> => {
    const database: IDBPDatabase = await openDB(name, VERSION, {
      upgrade(db) {
        db.createObjectStore(table, { keyPath: 'key' });
      },
      blocking() {
        database.close();
        onLost();
      },
      terminated() {
        opened = null;
      },
    });
    return database;
  };
  const use = (): Promise<IDBPDatabase> => {
    opened ??= open().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
  await use();
  return {
    get: async (key) => (await use()).get(table, key),
    put: async (thing) => {
      await (await use()).put(table, thing);
    },
    remove: async (key) => (await use()).delete(table, key),
    list: async () => (await use()).getAll(table),
  };
}
