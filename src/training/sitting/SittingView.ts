import type { Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { ScenarioCard } from '../scenario/ScenarioCard.ts';
import type { LogEntry } from './LogEntry.ts';
import type { BoardMark, CoachDepth, VerdictItem } from './SittingAction.ts';
import type { Spent } from './Spending.ts';

export type { ScenarioCard, SittingMode, WalkthroughStep } from '../scenario/ScenarioCard.ts';

export type SittingPhase = 'work-order' | 'bench' | 'repair' | 'closed';

/** One sample of what the learner's own instruments showed, ten times a second at most. */
export interface StripSample {
  readonly tick: Tick;
  readonly meterVolts: number | null;
  readonly gaugeKPa: number;
}

/** A mark on the suspect board, as last set. */
export interface MarkedItem {
  readonly item: VerdictItem;
  readonly mark: Exclude<BoardMark, 'open'>;
  readonly cites: readonly number[];
  readonly tick: Tick;
}

/** A sitting as its screens see it. */
export interface SittingView {
  readonly card: ScenarioCard;
  readonly phase: SittingPhase;
  readonly tick: Tick;
  readonly observation: Observation;
  readonly log: readonly LogEntry[];
  readonly verdict: {
    readonly item: VerdictItem;
    readonly mode: string | null;
    readonly cites: readonly number[];
    readonly tick: Tick;
  } | null;
  /** The suspect board: marked items, each once, in the order of their first marking. */
  readonly marks: readonly MarkedItem[];
  /** How often the coach was asked, by depth. */
  readonly coachAsked: Readonly<Record<CoachDepth, number>>;
  readonly renewed: readonly { readonly item: ItemId; readonly tick: Tick }[];
  /** What the job has taken so far, by the book. */
  readonly spent: Spent;
  /** Walkthrough and introduction: index of the step to do now; equals `card.steps.length` when all are done. */
  readonly step: number;
  /** Walkthrough and introduction: indices of the steps before it that were passed over, not done. */
  readonly passedOver: readonly number[];
  /** What the instruments showed so far (for the strip chart under the log). */
  readonly strip: readonly StripSample[];
}
