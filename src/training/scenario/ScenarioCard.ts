import type { RigId } from '../../sim/devices/BenchSurface.ts';
import type { BenchTool, ItemId } from '../../sim/devices/items.ts';
import type { JobLimits } from './JobLimits.ts';
import type { OtherWords } from './jobTexts.ts';
import type { SittingMode } from './modes.ts';
import type { DrawnVariant } from './Variant.ts';
import type { ScoreWeights } from './weights.ts';

export type { SittingMode } from './modes.ts';

/** What a learner may see of a scenario; the faults are not in it. */
export interface ScenarioCard {
  readonly id: string;
  readonly contentHash: string;
  /** The rig on the bench; absent where it is the leak detection pump. */
  readonly rig?: RigId;
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
    /** Parts of the truck that are new. */
    readonly renewed?: readonly ItemId[];
    readonly codes: readonly { readonly code: string; readonly status: 'stored' | 'pending' }[];
    readonly cautions: readonly string[];
  };
  /** What is at hand; left out, everything. */
  readonly tools?: readonly BenchTool[];
  /** What the job may take, where it has limits. */
  readonly limits?: JobLimits;
  /** What the parts of the score are worth, where the job has weights of its own. */
  readonly weights?: ScoreWeights;
  /** There are variants: what is wrong is drawn when the job is taken. */
  readonly drawn?: true;
  /** Which of them was drawn. */
  readonly variant?: DrawnVariant;
  /** What these sentences are in other languages, where the file itself says so. */
  readonly words?: OtherWords;
  /** Walkthrough and introduction: the steps in order, without the tests of their being done. */
  readonly steps: readonly WalkthroughStep[];
}

export interface WalkthroughStep {
  readonly id: string;
  readonly say: string;
  readonly how: string;
}
