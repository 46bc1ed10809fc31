import { LifeWatch } from './LifeWatch.ts';
import type { LifeQuestion, LifeSign } from './life.ts';

/** A line to a worker. */
export interface WorkerLine<To> {
  post(message: To): void;
  /** Ends it, whatever is being worked on. */
  hangUp(): void;
}

/**
 * What happens to a line by itself. gone: whoever was there is there no more, and has not said why. failed: it did not start, or
 * broke.
 */
export type LineEnd =
  | { readonly kind: 'gone' }
  | { readonly kind: 'failed'; readonly code: 'no-worker' | 'broke'; readonly detail: string };

/**
 * Opens a worker whose program stands at `url` and which shows that it lives (`showLife`). What it says goes to `hear`; a failure to
 * start and a death without a word too.
 */
export function openWorker<To, From>(
  url: string,
  purpose: string,
  hear: (message: From | LineEnd) => void,
): WorkerLine<To> {
  let worker: Worker | null = null;
  let life: LifeWatch | null = null;
  let ready = false;
  const end = (): void => {
    life?.end();
    worker?.terminate();
    worker = null;
  };
  const fail = (detail: string): void => {
    end();
    hear({ kind: 'failed', code: ready ? 'broke' : 'no-worker', detail });
  };
  try {
    const name = `${purpose}-${[...crypto.getRandomValues(new Uint32Array(3))].join('-')}`;
    worker = new Worker(url, { type: 'module', name });
    life = new LifeWatch({
      name,
      locks: navigator.locks,
      ask: () => worker?.postMessage({ kind: 'alive?' } satisfies LifeQuestion),
      died: () => {
        end();
        hear({ kind: 'gone' });
      },
    });
    worker.onmessage = ({ data }: MessageEvent<From | LifeSign>) => {
      ready = true;
      const sign = isLifeSign(data) ? data : null;
      life?.heard(sign);
      if (!isLifeSign(data)) hear(data);
    };
    worker.onerror = (event) => {
      event.preventDefault();
      fail(event.message ?? '');
    };
    worker.onmessageerror = () => fail('message');
  } catch (error) {
    // The caller has its line before it hears that it is dead.
    queueMicrotask(() => fail(error instanceof Error ? error.message : String(error)));
  }
  return {
    post: (message) => worker?.postMessage(message),
    hangUp: end,
  };
}

function isLifeSign(data: unknown): data is LifeSign {
  return typeof data === 'object' && data !== null && 'kind' in data && data.kind === 'alive';
}
