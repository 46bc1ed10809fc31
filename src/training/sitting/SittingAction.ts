import type { Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Action } from '../../sim/world/Action.ts';

/** What a verdict may name. */
export type VerdictItem = ItemId | 'nothing-wrong';

/** What a learner may think of an item on the suspect board; 'open' takes a mark back. */
export const BOARD_MARKS = ['cleared', 'convicted', 'open'] as const;
export type BoardMark = (typeof BOARD_MARKS)[number];

/** How far the coach is asked to go: a question to think about, a test worth doing, how to do it. */
export const COACH_DEPTHS = ['question', 'test', 'procedure'] as const;
export type CoachDepth = (typeof COACH_DEPTHS)[number];

/** Everything a learner can do in a sitting: the world's actions and the paperwork. A record is a list of these. */
export type SittingAction =
  | Action
  | { readonly kind: 'accept-job' }
  /** Takes what the meter, the gauge and the last ten seconds show, with its whole context. */
  | { readonly kind: 'log' }
  /** Reads all codes and freeze data through the reader; what it showed is logged by itself. Key on needed. */
  | { readonly kind: 'read-codes' }
  /** Lets so many seconds pass. */
  | { readonly kind: 'wait'; readonly seconds: number }
  /** Lets time pass until every instrument stands still, a minute at most. */
  | { readonly kind: 'wait-steady' }
  | { readonly kind: 'annotate'; readonly entry: number; readonly text: string }
  /** Walkthrough: passes over the step that is to do now. */
  | { readonly kind: 'skip-step' }
  /** Marks an item on the suspect board, citing log entries. */
  | {
      readonly kind: 'mark-item';
      readonly item: VerdictItem;
      readonly mark: BoardMark;
      readonly cites: readonly number[];
    }
  /** Asks the coach; what it says follows from what was shown, so the record keeps only that it was asked. */
  | { readonly kind: 'ask-coach'; readonly depth: CoachDepth }
  /** `mode` is what is thought to be wrong with the item, in the catalogue's words; null where it was not said. */
  | {
      readonly kind: 'give-verdict';
      readonly item: VerdictItem;
      readonly mode: string | null;
      readonly cites: readonly number[];
    }
  | { readonly kind: 'close-job' };

export interface TimedAction {
  readonly tick: Tick;
  readonly action: SittingAction;
}

/**
 * `renew` is refused before the verdict except for tool items; `give-verdict` once only; `close-job` after it; marks after the
 * verdict; the coach in an assessment; whatever takes a tool that the job does not have. An introduction has no verdict, no marks, no coach, no road and no parts, and is closed at any time.
 */
export const SITTING_REFUSALS = [
  'job-not-accepted',
  'job-already-accepted',
  'job-is-closed',
  'verdict-already-given',
  'verdict-needed-first',
  'no-such-entry',
  'too-many-citations',
  'text-too-long',
  'no-step-to-skip',
  'coach-is-off',
  'not-in-introduction',
  'tool-not-at-hand',
] as const;
export type SittingRefusal = (typeof SITTING_REFUSALS)[number];
