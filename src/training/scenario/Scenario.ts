import type { RigId } from '../../sim/devices/BenchSurface.ts';
import type { BenchTool } from '../../sim/devices/items.ts';
import type { DrivesBefore, FaultChoice } from '../../sim/world/WorldPort.ts';
import type { DoneCondition } from './DoneCondition.ts';
import type { JobLimits } from './JobLimits.ts';
import type { OtherWords } from './jobTexts.ts';
import type { RuleId } from './ruleIds.ts';
import type { DutyRule } from './ruleNeeds.ts';
import type { ScenarioCard, SittingMode, WalkthroughStep } from './ScenarioCard.ts';
import type { SeedPolicy } from './seedPolicy.ts';
import type { DrawnVariant, Variant } from './Variant.ts';
import type { ScoreWeights } from './weights.ts';

/** One step of a walkthrough or an introduction, with the test of its being done. */
export interface ScenarioStep extends WalkthroughStep {
  readonly done: DoneCondition;
}

/** The content of a scenario file, checked. Everything but the hash of itself. */
export interface ScenarioContent {
  readonly format: 1;
  /** The rig on the bench; absent where it is the leak detection pump. */
  readonly rig?: RigId;
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
  /** What is at hand; left out, everything. */
  readonly tools?: readonly BenchTool[];
  /** What the job may take, where it says so. */
  readonly limits?: JobLimits;
  readonly seed: string;
  /** Which truck a learner gets, where the job says so. */
  readonly seedPolicy?: SeedPolicy;
  readonly drives: DrivesBefore;
  readonly faults: readonly FaultChoice[];
  /** Where there is more than one truth: all of them, the scenario's own the first. */
  readonly variants?: readonly Variant[];
  readonly rulesOff: readonly RuleId[];
  /** Duties that the job asks for whatever its plan and the sitting. */
  readonly rulesOn?: readonly DutyRule[];
  /** What the parts of the score are worth, where the job says so. */
  readonly weights?: ScoreWeights;
  readonly steps: readonly ScenarioStep[];
  /** The author's remark, shown after closing. */
  readonly remark: string;
  /** What its sentences are in other languages, where the file itself says so. */
  readonly words?: OtherWords;
}

export interface Scenario extends ScenarioContent {
  /** SHA-256 over the canonical JSON of the content; of a truth that was drawn, that of the scenario it was drawn from. */
  readonly contentHash: string;
  /** Where this is a truth that was drawn from a scenario with variants. */
  readonly variant?: DrawnVariant;
}
