import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  ASK_MS,
  LifeWatch,
  type LifeWatchParts,
  MOST_SILENT,
  MOST_SILENT_AT_FIRST,
} from '../../../src/app/workers/LifeWatch.ts';
import { type LifeSign, showLife } from '../../../src/app/workers/life.ts';

/** Locks as the Web Locks API gives them: one holder at a time, the others in their order; a holder that dies lets go. */
class Locks {
  private readonly queues = new Map<string, (() => void)[]>();

  readonly request = ((name: string, ...rest: unknown[]) => {
    const granted = rest.at(-1) as () => unknown;
    const { signal } = (rest.length > 1 ? rest[0] : {}) as { readonly signal?: AbortSignal };
    const queue = this.queues.get(name) ?? [];
    this.queues.set(name, queue);
    return new Promise<unknown>((resolve, reject) => {
      const grant = (): void => void Promise.resolve(granted()).then(resolve);
      signal?.addEventListener('abort', () => {
        const at = queue.indexOf(grant);
        if (at > 0) queue.splice(at, 1);
        reject(signal.reason);
      });
      queue.push(grant);
      if (queue.length === 1) grant();
    });
  }) as LockManager['request'];

  holderDies(name: string): void {
    const queue = this.queues.get(name) ?? [];
    queue.shift();
    queue[0]?.();
  }

  waiting(name: string): number {
    return (this.queues.get(name) ?? []).length - 1;
  }
}

/** A worker as far as its life goes, and the page that watches it. */
function watched(locks: Locks | undefined) {
  let deaths = 0;
  let asked = 0;
  let lives = true;
  const parts: LifeWatchParts = {
    name: 'worker-1',
    locks,
    ask: () => {
      asked += 1;
      if (lives) answer();
    },
    died: () => {
      deaths += 1;
    },
  };
  const watch = new LifeWatch(parts);
  let answer = (): void => {};
  const start = (): void => {
    answer = showLife({
      name: parts.name,
      navigator: locks === undefined ? {} : { locks: locks as unknown as LockManager },
      postMessage: (sign: LifeSign) => watch.heard(sign),
    });
  };
  return {
    watch,
    start,
    die: () => {
      lives = false;
      locks?.holderDies(parts.name);
    },
    get deaths() {
      return deaths;
    },
    get asked() {
      return asked;
    },
  };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('a worker that dies without a word', () => {
  it('is noticed at once by the lock that it held, and need not be asked', () => {
    const worker = watched(new Locks());
    worker.start();
    vi.advanceTimersByTime(100 * ASK_MS);
    expect(worker.asked).toBe(0);
    expect(worker.deaths).toBe(0);
    worker.die();
    expect(worker.deaths).toBe(1);
  });

  it('is noticed by its silence where there are no locks', () => {
    const worker = watched(undefined);
    worker.start();
    vi.advanceTimersByTime(100 * ASK_MS);
    expect(worker.asked).toBe(100);
    expect(worker.deaths).toBe(0);
    worker.die();
    vi.advanceTimersByTime(MOST_SILENT * ASK_MS);
    expect(worker.deaths).toBe(0);
    vi.advanceTimersByTime(ASK_MS);
    expect(worker.deaths).toBe(1);
    vi.advanceTimersByTime(100 * ASK_MS);
    expect(worker.deaths).toBe(1);
  });

  it('is noticed when it never said a word, after a longer time: it may still be on its way', () => {
    const worker = watched(new Locks());
    vi.advanceTimersByTime(MOST_SILENT_AT_FIRST * ASK_MS);
    expect(worker.deaths).toBe(0);
    vi.advanceTimersByTime(ASK_MS);
    expect(worker.deaths).toBe(1);
  });

  it('may work long: what it says of its work is a sign of life too', () => {
    const worker = watched(undefined);
    worker.start();
    worker.die();
    for (let minute = 0; minute < 10; minute++) {
      vi.advanceTimersByTime(MOST_SILENT * ASK_MS);
      worker.watch.heard(null);
    }
    expect(worker.deaths).toBe(0);
  });
});

describe('a worker that is let go', () => {
  it.each([true, false])('is missed by nobody, with locks: %s', (has) => {
    const locks = has ? new Locks() : undefined;
    const worker = watched(locks);
    worker.start();
    worker.watch.end();
    expect(locks?.waiting('worker-1') ?? 0).toBe(0);
    worker.die();
    vi.advanceTimersByTime(100 * ASK_MS);
    expect(worker.deaths).toBe(0);
    expect(worker.asked).toBe(0);
  });
});
