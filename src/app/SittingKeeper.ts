import { TICKS_PER_SECOND } from '../base/ticks.ts';
import { LatestSaver } from '../platform/browser/LatestSaver.ts';
import type { KeptFacts, SittingStore, StoredSitting } from '../platform/browser/StoredSitting.ts';
import type { SittingRecord } from '../training/sitting/SittingRecord.ts';

/** At the latest after so much sitting time the record is saved again, even if nothing was done. */
const SAVE_TICKS = 2 * TICKS_PER_SECOND;
/** Handle positions come thirty a second; they wait for each other this long. */
const HANDLE_SAVE_TICKS = TICKS_PER_SECOND / 4;

/** What the keeper keeps. */
export interface Kept {
  readonly scenario: string;
  record(): SittingRecord;
  closed(): boolean;
  /** Points, once they are worked out; that may be some time after the job is closed. */
  score(): number | null;
  /** What it was worth in full, as it is kept; null before that is known. */
  facts(): KeptFacts | null;
}

/** Keeps the record of the open sitting on this device. */
export class SittingKeeper {
  private savedAt = 0;
  private dueAt: number | null = null;
  private readonly saver: LatestSaver<StoredSitting>;

  constructor(
    store: SittingStore,
    private readonly kept: Kept,
    private readonly nowMs: () => number,
  ) {
    this.saver = new LatestSaver((sitting) => store.put(sitting));
  }

  /** An action was done at `tick`: it is saved at once, a move of the pump's handle a moment later. */
  acted(kind: string, tick: number): void {
    if (kind !== 'pump-handle') this.save();
    else this.dueAt ??= tick + HANDLE_SAVE_TICKS;
  }

  /** Time went on to `tick`. */
  passed(tick: number): void {
    const due = this.dueAt ?? this.savedAt + SAVE_TICKS;
    if (tick >= due) this.save();
  }

  save(): void {
    const record = this.kept.record();
    const score = this.kept.score();
    this.savedAt = record.endTick;
    this.dueAt = null;
    this.saver.save({
      key: this.kept.scenario,
      scenario: this.kept.scenario,
      state: this.kept.closed() ? 'finished' : 'open',
      record,
      savedAtMs: this.nowMs(),
      tick: record.endTick,
      score,
      facts: this.kept.facts(),
    });
  }

  /** Settles when everything is written. */
  idle(): Promise<void> {
    return this.saver.idle();
  }
}
