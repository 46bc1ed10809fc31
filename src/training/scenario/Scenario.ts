import type { DrivesBefore, FaultChoice } from '../../sim/world/WorldPort.ts';
import type { DoneCondition } from './DoneCondition.ts';
import type { RuleId } from './ruleIds.ts';
import type { ScenarioCard, SittingMode, WalkthroughStep } from './ScenarioCard.ts';

/** One step of a walkthrough or an introduction, with the test of its being done. */
export interface ScenarioStep extends WalkthroughStep {
  readonly done: DoneCondition;
}

/** The content of a scenario file, checked. Everything but the hash of itself. */
export interface ScenarioContent {
  readonly format: 1;
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly mode: SittingMode;
  readonly level: 1 | 2 | 3 | 4;
  /** Minutes a careful learner should need. */
  readonly minutes: number;
  readonly aims: readonly string[];
  readonly workOrder: ScenarioCard['workOrder'];
  readonly bench: { readonly ambientC: number; readonly altitudeM: number; readonly fuelPercent: number };
  readonly seed: string;
  readonly drives: DrivesBefore;
  readonly faults: readonly FaultChoice[];
  readonly rulesOff: readonly RuleId[];
  readonly steps: readonly ScenarioStep[];
  /** The author's remark, shown after closing. */
  readonly remark: string;
}

export interface Scenario extends ScenarioContent {
  /** SHA-256 over the canonical JSON of the content. */
  readonly contentHash: string;
}
