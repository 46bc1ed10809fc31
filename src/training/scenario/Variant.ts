import type { DrivesBefore, FaultChoice } from '../../sim/world/WorldPort.ts';
import type { ScenarioCard } from './ScenarioCard.ts';

/** Beside the scenario's own truth. More than these nobody keeps equally hard. */
export const MOST_VARIANTS = 8;

/** A fault of a variant: where it has `severityTo`, a severity is drawn between the two. */
export interface FaultRange extends FaultChoice {
  readonly severityTo?: number;
}

/** One of the truths of a scenario with variants. What it leaves out is as the scenario has it. */
export interface Variant {
  readonly faults: readonly FaultRange[];
  readonly codes?: ScenarioCard['workOrder']['codes'];
  readonly drives?: DrivesBefore;
  readonly complaint?: string;
  readonly history?: readonly string[];
  readonly remark?: string;
}

/** Which truth a sitting had of a scenario with variants: how it was drawn, and the hash of the content that came of it. */
export interface DrawnVariant {
  /** `first`, `free-` and a word that nobody chose, or `class-` a mark of the class `-seat-` a number. See `draw.ts`. */
  readonly draw: string;
  readonly contentHash: string;
}
