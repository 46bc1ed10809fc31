import type { SittingStore, StoredSitting } from './StoredSitting.ts';

/** Sittings for as long as the page lives. */
export function memoryStore(): SittingStore {
  const kept = new Map<string, StoredSitting>();
  return {
    get: async (key) => kept.get(key),
    put: async (sitting) => {
      kept.set(sitting.key, sitting);
    },
    remove: async (key) => {
      kept.delete(key);
    },
    list: async () => [...kept.values()],
  };
}
