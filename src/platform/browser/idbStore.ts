import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { SittingStore, StoredSitting } from './StoredSitting.ts';

const DATABASE = 'known-good';
const VERSION = 1;

interface Schema extends DBSchema {
  sittings: { key: string; value: StoredSitting };
}

/**
 * Sittings in IndexedDB. Rejects when the browser gives no database: private window, storage switched off, or a newer version's
 * page holding it.
 */
export async function openIdbStore(onLost: () => void): Promise<SittingStore> {
  if (typeof indexedDB === 'undefined') throw new DOMException('no IndexedDB here', 'SecurityError');
  const database: IDBPDatabase<Schema> = await openDB<Schema>(DATABASE, VERSION, {
    upgrade(db) {
      db.createObjectStore('sittings', { keyPath: 'key' });
    },
    blocking() {
      database.close();
      onLost();
    },
    terminated: onLost,
  });
  return {
    get: (key) => database.get('sittings', key),
    put: async (sitting) => {
      await database.put('sittings', sitting);
    },
    remove: (key) => database.delete('sittings', key),
    list: () => database.getAll('sittings'),
  };
}
