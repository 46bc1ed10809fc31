import { workerUrl } from 'virtual:worker/src/app/evidence/evidenceWorker.ts';
import { LifeWatch } from './LifeWatch.ts';
import type { LifeQuestion, LifeSign } from './life.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** A line to someone who weighs the evidence. */
export interface EvidenceLine {
  post(message: ToWorker): void;
  /** Ends it, whatever is being worked on. */
  hangUp(): void;
}

/** What is said on a line. gone: whoever was there is there no more, and has not said why. */
export type Said = FromWorker | { readonly kind: 'gone' };

/** Opens a line; what is said on it goes to `hear`, a failure to start too. */
export type OpenLine = (hear: (message: Said) => void) => EvidenceLine;

/** A line to a worker of its own. */
export const workerLine: OpenLine = (hear) => {
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
    const name = `evidence-${[...crypto.getRandomValues(new Uint32Array(3))].join('-')}`;
    worker = new Worker(workerUrl, { type: 'module', name });
    life = new LifeWatch({
      name,
      locks: navigator.locks,
      ask: () => worker?.postMessage({ kind: 'alive?' } satisfies LifeQuestion),
      died: () => {
        end();
        hear({ kind: 'gone' });
      },
    });
    worker.onmessage = ({ data }: MessageEvent<FromWorker | LifeSign>) => {
      ready = true;
      life?.heard(data.kind === 'alive' ? data : null);
      if (data.kind === 'alive') return;
      hear(data);
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
};
