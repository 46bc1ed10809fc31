import type { Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { LogEntry } from './LogEntry.ts';
import type { VerdictItem } from './SittingAction.ts';

export type SittingPhase = 'work-order' | 'bench' | 'repair' | 'closed';
export type SittingMode = 'walkthrough' | 'practice' | 'assessment';

/** What a learner may see of a scenario; the faults are not in it. */
export interface ScenarioCard {
  readonly id: string;
  readonly contentHash: string;
  readonly mode: SittingMode;
  readonly level: 1 | 2 | 3 | 4;
  readonly title: string;
  readonly summary: string;
  readonly minutes: number;
  readonly aims: readonly string[];
  readonly workOrder: {
    readonly number: string;
    readonly vehicle: string;
    readonly complaint: string;
    readonly history: readonly string[];
    readonly codes: readonly { readonly code: string; readonly status: 'stored' | 'pending' }[];
    readonly cautions: readonly string[];
  };
  /** Walkthrough only: the steps in order, each with the test of being done (see `walkthrough.ts`). */
  readonly steps: readonly WalkthroughStep[];
}

export interface WalkthroughStep {
  readonly id: string;
  readonly say: string;
  readonly how: string;
}

/** One sample of what the learner's own instruments showed, ten times a second at most. */
export interface StripSample {
  readonly tick: Tick;
  readonly meterVolts: number | null;
  readonly gaugeKPa: number;
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
    readonly cites: readonly number[];
    readonly tick: Tick;
  } | null;
  readonly renewed: readonly { readonly item: ItemId; readonly tick: Tick }[];
  /** Walkthrough: index of the step to do now; equals `card.steps.length` when all are done. */
  readonly step: number;
  /** What the instruments showed so far (for the strip chart under the log). */
  readonly strip: readonly StripSample[];
}
