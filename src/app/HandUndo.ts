import { type Signal, signal } from '@preact/signals';
import type { Refusal } from '../sim/world/Action.ts';
import type { Observation } from '../sim/world/Observation.ts';
import type { SittingAction, SittingRefusal } from '../training/sitting/SittingAction.ts';
import { UndoHistory } from '../ui/interaction/UndoHistory.ts';
import type { Caption } from '../ui/panels/Desk.ts';
import { noteDone, undoneSentence } from './noteDone.ts';

/** What the hand has done and can put back, as the panels show it. */
export class HandUndo {
  readonly next: Signal<UndoHistory['next']>;
  readonly why: Signal<UndoHistory['why']>;
  private readonly history: UndoHistory;

  constructor(floor: ConstructorParameters<typeof UndoHistory>[0]) {
    this.history = new UndoHistory(floor);
    this.next = signal(this.history.next);
    this.why = signal(this.history.why);
  }

  /** An action was done: the bench looked like `before`, and looks like `after` now. */
  done(action: SittingAction, before: Observation, after: Observation): void {
    noteDone(this.history, action, before, after);
    this.offer();
  }

  /** Puts the last thing back through `act`; gives what to say of it. */
  undo(
    now: Observation,
    act: (action: SittingAction) => Refusal | SittingRefusal | null,
  ): Pick<Caption, 'sentence' | 'tone'> {
    const undone = this.history.undo(now, act);
    this.offer();
    return { sentence: undoneSentence(undone), tone: undone.kind === 'undone' ? 'news' : 'refusal' };
  }

  private offer(): void {
    this.next.value = this.history.next;
    this.why.value = this.history.why;
  }
}
