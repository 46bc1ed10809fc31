import { TICKS_PER_SECOND } from '../base/ticks.ts';
import type { Refusal } from '../sim/world/Action.ts';
import type { SittingRefusal } from '../training/sitting/SittingAction.ts';
import { StrokeQueue } from '../ui/interaction/StrokeQueue.ts';

/** How often the handle is looked at while strokes are made that time would otherwise run over. */
const STROKE_LOOK_TICKS = TICKS_PER_SECOND / 20;
const MOST_LOOKS = 200;

interface PumpStrokesParts {
  pump(): { readonly moving: boolean };
  make(depth: number): Refusal | SittingRefusal | null;
  letPass(ticks: number): void;
}

/** Makes the strokes that were asked for, one after the other as the handle comes home. */
export class PumpStrokes {
  private readonly queue = new StrokeQueue();

  constructor(private readonly parts: PumpStrokesParts) {}

  ask(depth: number): Refusal | SittingRefusal | null {
    this.queue.ask(depth);
    return this.goOn();
  }

  /** Makes the next stroke that was asked for, once the handle is home. */
  goOn(): Refusal | SittingRefusal | null {
    if (this.queue.length === 0) return null;
    const depth = this.queue.next(this.parts.pump());
    return depth === null ? null : this.parts.make(depth);
  }

  /** What was asked for before time runs ahead is done before it does. */
  finish(): void {
    for (let looks = 0; this.queue.length > 0 && looks < MOST_LOOKS; looks++) {
      this.parts.letPass(STROKE_LOOK_TICKS);
      this.goOn();
    }
    this.queue.clear();
  }

  /** Those that wait are not made. False when none did. */
  drop(): boolean {
    const waited = this.queue.length > 0;
    this.queue.clear();
    return waited;
  }
}
