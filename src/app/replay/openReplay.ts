import { workerUrl } from 'virtual:worker/src/app/replay/replayWorker.ts';
import type { Tick } from '../../base/ticks.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { ReplayDesk, ReplayMoment } from '../../ui/panels/ReplayDesk.ts';
import { type LineEnd, openWorker, type WorkerLine } from '../workers/livingWorker.ts';
import type { FromReplay, ToReplay } from './messages.ts';

/** A line to someone who sits the record again. */
export type ReplayLine = WorkerLine<ToReplay>;
export type OpenReplayLine = (hear: (message: FromReplay | LineEnd) => void) => ReplayLine;

export interface RunningReplay extends ReplayDesk {
  /** Ends it; what was asked and not answered is rejected. */
  end(): void;
}

interface Waiting {
  readonly tick: Tick;
  readonly resolve: (moment: ReplayMoment) => void;
  readonly reject: (error: Error) => void;
}

/**
 * Sits a closed job's record again in a worker of its own, so that the page is never held up. One that dies without a word is
 * replaced once, and what was asked of it is asked again.
 */
export function openReplay(
  sealed: SealedScenario,
  record: SittingRecord,
  openLine: OpenReplayLine = replayWorkerLine,
): RunningReplay {
  const waiting = new Map<number, Waiting>();
  let asked = 0;
  let replaced = false;
  let over: string | null = null;
  const fail = (detail: string): void => {
    over ??= detail;
    for (const { reject } of waiting.values()) reject(new Error(detail));
    waiting.clear();
  };
  const hear = (message: FromReplay | LineEnd): void => {
    if (over !== null) return;
    switch (message.kind) {
      case 'failed':
        return fail(message.detail);
      case 'gone':
        if (replaced) return fail('gone');
        replaced = true;
        line = begin();
        for (const [id, { tick }] of waiting) line.post({ kind: 'at', id, tick });
        return;
      case 'moment':
        waiting.get(message.id)?.resolve(message.moment);
        waiting.delete(message.id);
    }
  };
  const begin = (): ReplayLine => {
    const begun = openLine(hear);
    begun.post({ kind: 'open', sealed, record });
    return begun;
  };
  let line = begin();
  return {
    endTick: record.endTick,
    at: (tick: Tick) =>
      new Promise((resolve, reject) => {
        if (over !== null) return reject(new Error(over));
        asked += 1;
        waiting.set(asked, { tick, resolve, reject });
        line.post({ kind: 'at', id: asked, tick });
      }),
    end: () => {
      fail('ended');
      line.hangUp();
    },
  };
}

const replayWorkerLine: OpenReplayLine = (hear) =>
  openWorker<ToReplay, FromReplay>(workerUrl, 'replay', hear);
