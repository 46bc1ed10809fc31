import type { Store } from './StoredSitting.ts';

/** Things for as long as the page lives. */
export function memoryStore<T extends { readonly key: string }>(): Store<T> {
  const kept = new Map<string, T>();
  return {
    get: async (key) => kept.get(key),
    put: async (thing) => {
      kept.set(thing.key, thing);
    },
    remove: async (key) => {
      kept.delete(key);
    },
    list: async () => [...kept.values()],
  };
}
