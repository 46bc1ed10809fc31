import { workerUrl } from 'virtual:worker/src/app/replay/replayWorker.ts';
import type { Tick } from '../../base/ticks.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { ReplayDesk, ReplayMoment } from '../../ui/panels/ReplayDesk.ts';
import type { FromReplay, ToReplay } from './messages.ts';

/** A line to someone who sits the record again, and its end. */
export interface ReplayLine {
  post(message: ToReplay): void;
  hangUp(): void;
}
export type OpenReplayLine = (hear: (message: FromReplay) => void) => ReplayLine;

export interface RunningReplay extends ReplayDesk {
  /** Ends it; what was asked and not answered is rejected. */
  end(): void;
}

interface Waiting {
  readonly resolve: (moment: ReplayMoment) => void;
  readonly reject: (error: Error) => void;
}

/** Sits a closed job's record again in a worker of its own, so that the page is never held up. */
export function openReplay(
  sealed: SealedScenario,
  record: SittingRecord,
  openLine: OpenReplayLine = replayWorkerLine,
): RunningReplay {
  const waiting = new Map<number, Waiting>();
  let asked = 0;
  let over: string | null = null;
  const fail = (detail: string): void => {
    over ??= detail;
    for (const { reject } of waiting.values()) reject(new Error(detail));
    waiting.clear();
  };
  const line = openLine((message) => {
    if (message.kind === 'failed') return fail(message.detail);
    waiting.get(message.id)?.resolve(message.moment);
    waiting.delete(message.id);
  });
  line.post({ kind: 'open', sealed, record });
  return {
    endTick: record.endTick,
    at: (tick: Tick) =>
      new Promise((resolve, reject) => {
        if (over !== null) return reject(new Error(over));
        asked += 1;
        waiting.set(asked, { resolve, reject });
        line.post({ kind: 'at', id: asked, tick });
      }),
    end: () => {
      fail('ended');
      line.hangUp();
    },
  };
}

const replayWorkerLine: OpenReplayLine = (hear) => {
  let worker: Worker | null = null;
  const fail = (detail: string): void => hear({ kind: 'failed', detail });
  try {
    worker = new Worker(workerUrl, { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<FromReplay>) => hear(data);
    worker.onerror = (event) => {
      event.preventDefault();
      fail(event.message ?? '');
    };
  } catch (error) {
    queueMicrotask(() => fail(error instanceof Error ? error.message : String(error)));
  }
  return {
    post: (message) => worker?.postMessage(message),
    hangUp: () => worker?.terminate(),
  };
};
