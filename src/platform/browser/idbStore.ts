import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { SittingStore, StoredSitting } from './StoredSitting.ts';

const DATABASE = 'known-good';
const VERSION = 1;

type Database = IDBPDatabase<Schema>;

interface Schema extends DBSchema {
  sittings: { key: string; value: StoredSitting };
}

/**
 * Sittings in IndexedDB. Rejects when the browser gives no database: private window, storage switched off, or a newer version's
 * page holding it. `onLost` says that such a page took it over later; a database that the browser itself closed, as when a user
 * clears what pages have stored, is opened again with the next call.
 */
export async function openIdbStore(onLost: () => void): Promise<SittingStore> {
  if (typeof indexedDB === 'undefined') throw new DOMException('no IndexedDB here', 'SecurityError');
  let opened: Promise<Database> | null = null;
  const open = async (): Promise<Database> => {
    const database: Database = await openDB<Schema>(DATABASE, VERSION, {
      upgrade(db) {
        db.createObjectStore('sittings', { keyPath: 'key' });
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
  const use = (): Promise<Database> => {
    opened ??= open().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
  await use();
  return {
    get: async (key) => (await use()).get('sittings', key),
    put: async (sitting) => {
      await (await use()).put('sittings', sitting);
    },
    remove: async (key) => (await use()).delete('sittings', key),
    list: async () => (await use()).getAll('sittings'),
  };
}
