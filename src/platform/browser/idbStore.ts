import { type IDBPDatabase, type IDBPObjectStore, openDB } from 'idb';
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
  /**
   * One piece of work, and at once the word that this was all. A page that is left in that moment is put to sleep by some browsers (WebKit),
   * before it could hear that its work is done; unfinished, it would keep every page that comes after from the store.
   */
  const work = async <Mode extends IDBTransactionMode, Got>(
    mode: Mode,
    ask: (all: IDBPObjectStore<unknown, [string], string, Mode>) => Promise<Got>,
  ): Promise<Got> => {
    const transaction = (await use()).transaction(table, mode);
    const asked = ask(transaction.store);
    transaction.commit();
    const [got] = await Promise.all([asked, transaction.done]);
    return got;
  };
  return {
    get: (key) => work('readonly', (all) => all.get(key)),
    put: async (thing) => {
      await work('readwrite', (all) => all.put(thing));
    },
    remove: (key) => work('readwrite', (all) => all.delete(key)),
    list: () => work('readonly', (all) => all.getAll()),
  };
}
