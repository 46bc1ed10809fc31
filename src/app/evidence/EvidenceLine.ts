import { workerUrl } from 'virtual:worker/src/app/evidence/evidenceWorker.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** A line to someone who weighs the evidence. */
export interface EvidenceLine {
  post(message: ToWorker): void;
  /** Ends it, whatever is being worked on. */
  hangUp(): void;
}

/** Opens a line; what is said on it goes to `hear`, a failure to start too. */
export type OpenLine = (hear: (message: FromWorker) => void) => EvidenceLine;

/** A line to a worker of its own. */
export const workerLine: OpenLine = (hear) => {
  let worker: Worker | null = null;
  let ready = false;
  const fail = (detail: string): void => {
    worker?.terminate();
    worker = null;
    hear({ kind: 'failed', code: ready ? 'broke' : 'no-worker', detail });
  };
  try {
    worker = new Worker(workerUrl, { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      ready = true;
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
    hangUp: () => {
      worker?.terminate();
      worker = null;
    },
  };
};
