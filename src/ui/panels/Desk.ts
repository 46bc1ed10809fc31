import type { ReadonlySignal, Signal } from '@preact/signals';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Refusal } from '../../sim/world/Action.ts';
import type { InsideObservation, Observation } from '../../sim/world/Observation.ts';
import type { Advice } from '../../training/coach/Advice.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../training/sitting/LogEntry.ts';
import type { CoachDepth, SittingAction, SittingRefusal } from '../../training/sitting/SittingAction.ts';
import type {
  ScenarioCard,
  SittingPhase,
  SittingView,
  StripSample,
} from '../../training/sitting/SittingView.ts';
import type { Touch } from '../interaction/Touch.ts';
import type { UndoHistory } from '../interaction/UndoHistory.ts';

/** One open sitting as its screens see it: signals that change only when their value did, and the one way in. */
export interface Desk {
  readonly card: ScenarioCard;
  readonly phase: ReadonlySignal<SittingPhase>;
  /** Renewed ten times a second and after each action. */
  readonly observation: ReadonlySignal<Observation>;
  readonly log: ReadonlySignal<readonly LogEntry[]>;
  readonly strip: ReadonlySignal<readonly StripSample[]>;
  /** Whole seconds of sitting time, as ticks. */
  readonly tick: ReadonlySignal<number>;
  readonly step: ReadonlySignal<number>;
  /** Walkthrough and introduction: indices of the steps that were passed over. */
  readonly passedOver: ReadonlySignal<readonly number[]>;
  readonly verdict: ReadonlySignal<SittingView['verdict']>;
  /** What the present step asks the hand to touch next; null where there is no step, or nothing to touch. */
  readonly touch: ReadonlySignal<Touch | null>;
  /**
   * The inside of the unit while it is shown, renewed ten times a second at most. Always null for a learner who is not led:
   * there the sitting itself does not give it.
   */
  readonly inside: ReadonlySignal<InsideObservation | null>;
  /** Opens the cut-away, or closes it: what nobody sees is not worked out. */
  showInside(shown: boolean): void;
  /** The author's last words, for the end of an introduction; null in every job. */
  readonly lastWords: string | null;
  /** The suspect board as it stands. */
  readonly marks: ReadonlySignal<SittingView['marks']>;
  readonly coach: ReadonlySignal<CoachState>;
  /** What the closed job was worth; null until it is closed and worked out. */
  readonly facts: ReadonlySignal<DebriefFacts | null>;
  readonly renewed: ReadonlySignal<SittingView['renewed']>;
  /** What the job has taken so far, by the book. */
  readonly spent: ReadonlySignal<SittingView['spent']>;
  /** True once the learner has looked at the service data: from then on cavities are named by function too. */
  readonly functionsKnown: Signal<boolean>;
  /** The last thing the bench has to say: a refusal, a placing, a logged entry. */
  readonly caption: ReadonlySignal<Caption>;
  /** What just broke, burnt or came to be seen on the bench, for some seconds; then null. */
  readonly event: ReadonlySignal<BenchEvent | null>;
  /** What would be put back next, and why what was done last is not that; null each where there is none. */
  readonly undoNext: ReadonlySignal<UndoHistory['next']>;
  readonly undoWhy: ReadonlySignal<UndoHistory['why']>;
  /** Puts the last thing back that a hand can put back, and says so. */
  undo(): void;
  /** Does one action now. A refusal is said in the caption and given back. */
  act(action: SittingAction): Refusal | SittingRefusal | null;
  /** Drives the truck, and says so when it is back. The bench waits meanwhile, and the page does not stand still. */
  roadTest(cycles: number): Promise<Refusal | SittingRefusal | null>;
  /** Lets sitting time run ahead, and says so. */
  wait(seconds: number): void;
  /** Lets sitting time run ahead until every instrument stands still, and says how long it took. */
  waitSteady(): void;
  /** Takes a reading and says so. */
  logReading(): void;
  tell(sentence: string): void;
  priceOf(item: ItemId): number;
  /** Asks the coach; the answer comes in `coach`. */
  askCoach(depth: CoachDepth): void;
  exportRecord(): void;
}

/** The coach: off in an assessment, silent until asked, at work on its answer, or with an answer given. */
export type CoachState =
  | { readonly kind: 'off' | 'silent' }
  | { readonly kind: 'thinking'; readonly depth: CoachDepth }
  | {
      readonly kind: 'says';
      readonly depth: CoachDepth;
      readonly advice: Advice;
      /** Log entries there were when it was given. */
      readonly entries: number;
    };

/** Something that happened on the bench by itself. */
export interface BenchEvent {
  readonly sentence: string;
  /** The caption that stood when it happened: the event takes its place, and stands before any later one. */
  readonly after: number;
}

export interface Caption {
  /** Counts up, so that the same sentence twice is told twice. */
  readonly id: number;
  readonly sentence: string;
  readonly tone: 'news' | 'refusal';
}
