import { describe, expect, it, vi } from 'vitest';
import { openIdbStore } from '../../src/platform/browser/idbStore.ts';
import { LatestSaver } from '../../src/platform/browser/LatestSaver.ts';
import { memoryStore } from '../../src/platform/browser/memoryStore.ts';
import type { SittingStore, StoredSitting, StoreTrouble } from '../../src/platform/browser/StoredSitting.ts';
import { openSafeStore } from '../../src/platform/browser/safeStore.ts';
import { parseSettings } from '../../src/platform/browser/settings.ts';
import { troubleOf } from '../../src/platform/browser/troubleOf.ts';

function sitting(tick: number): StoredSitting {
  return { key: 'job', scenario: 'job', state: 'open', record: { tick }, savedAtMs: 0, tick, score: null };
}

/** A disk that fails its writes with errors of these names, one after another; '' lets one through. */
function failing(names: string[]): SittingStore {
  const store = memoryStore<StoredSitting>();
  return {
    ...store,
    put: async (one) => {
      const name = names.shift() ?? '';
      if (name !== '') throw new DOMException('no', name);
      await store.put(one);
    },
  };
}

describe('the store that never fails', () => {
  it('goes on in memory where the browser has no database, and says so once', async () => {
    const told: (StoreTrouble | null)[] = [];
    const store = await openSafeStore(openIdbStore, (trouble) => told.push(trouble));
    await store.put(sitting(1));
    await store.put(sitting(2));
    expect((await store.get('job'))?.tick).toBe(2);
    expect(told).toEqual(['store-blocked']);
  });

  it('tells a full disk once, keeps the newest in memory, and tells when it saves again', async () => {
    const told: (StoreTrouble | null)[] = [];
    const full = 'QuotaExceededError';
    const store = await openSafeStore(
      async () => failing([full, full, '']),
      (trouble) => told.push(trouble),
    );
    for (const tick of [1, 2]) await store.put(sitting(tick));
    expect((await store.get('job'))?.tick).toBe(2);
    await store.put(sitting(3));
    expect(told).toEqual(['store-full', null]);
    expect((await store.list()).map(({ tick }) => tick)).toEqual([3]);
  });

  it('does not wait for ever for a database that opens and then gives no answer', async () => {
    vi.useFakeTimers();
    const told: (StoreTrouble | null)[] = [];
    const silent = (): Promise<never> => new Promise(() => {});
    const store = await openSafeStore<StoredSitting>(
      async () => ({ get: silent, put: silent, remove: silent, list: silent }),
      (trouble) => told.push(trouble),
    );
    const written = store.put(sitting(1));
    const listed = written.then(() => store.list());
    await vi.advanceTimersByTimeAsync(30_000);
    vi.useRealTimers();
    expect((await listed).map(({ tick }) => tick)).toEqual([1]);
    expect(told).toEqual(['store-failed']);
  });

  it('does not list what was removed', async () => {
    const store = await openSafeStore(
      async () => memoryStore<StoredSitting>(),
      () => {},
    );
    await store.put(sitting(1));
    await store.remove('job');
    expect(await store.list()).toEqual([]);
    expect(await store.get('job')).toBeUndefined();
  });

  // Names of the errors: Indexed Database API 3.0 and Web IDL.
  it('knows the browser errors by their standard names', () => {
    expect(troubleOf(new DOMException('', 'QuotaExceededError'))).toBe('store-full');
    expect(troubleOf(new DOMException('', 'SecurityError'))).toBe('store-blocked');
    expect(troubleOf(new DOMException('', 'VersionError'))).toBe('store-newer');
    expect(troubleOf(new Error('anything'))).toBe('store-failed');
  });
});

describe('the saver', () => {
  it('writes at once, then only the newest of what came meanwhile', async () => {
    const written: number[] = [];
    const gates: (() => void)[] = [];
    const saver = new LatestSaver<number>((state) => {
      written.push(state);
      return new Promise((resolve) => gates.push(resolve));
    });
    for (const state of [1, 2, 3, 4]) saver.save(state);
    expect(written).toEqual([1]);
    gates[0]?.();
    await Promise.resolve();
    await new Promise((resolve) => setTimeout(resolve, 0));
    expect(written).toEqual([1, 4]);
    gates[1]?.();
    await saver.idle();
    expect(written).toEqual([1, 4]);
  });

  it('goes on after a write that failed', async () => {
    const written: number[] = [];
    const saver = new LatestSaver<number>(async (state) => {
      written.push(state);
      if (state === 1) throw new Error('disk');
    });
    saver.save(1);
    saver.save(2);
    await saver.idle();
    expect(written).toEqual([1, 2]);
  });
});

describe('settings', () => {
  it('survive whatever was stored', () => {
    const defaults = parseSettings(null);
    expect(parseSettings('{')).toEqual(defaults);
    expect(parseSettings('[]')).toEqual(defaults);
    expect(parseSettings('{"theme":"neon","volume":7,"muted":"yes"}')).toEqual(defaults);
    expect(parseSettings('{"theme":"dark","volume":0.2,"letterShortcuts":false}')).toMatchObject({
      theme: 'dark',
      volume: 0.2,
      letterShortcuts: false,
    });
  });
});
