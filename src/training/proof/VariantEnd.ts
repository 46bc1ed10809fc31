import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { ValidityFault } from '../learners/validity.ts';
import type { StatedCodes } from './ScenarioProof.ts';

/** One truth of a scenario with variants at an end of its ranges, and what it costs a careful learner. */
export interface VariantEnd {
  /** Counting from 1: the scenario's own first, then `variants` in their order. */
  readonly variant: number;
  /** At which end of its ranges; `only` where it has none. */
  readonly end: 'only' | 'mild' | 'worst';
  readonly faults: readonly FaultChoice[];
  /** The plan of tests of a careful learner. */
  readonly tests: readonly StandardTestId[];
  readonly minutes: number;
  readonly money: number;
  readonly proven: boolean;
  readonly codes: { readonly stated: StatedCodes; readonly held: StatedCodes };
}

/** What stands against handing the variants out as equally hard. */
export type VariantFinding =
  | { readonly kind: 'variant-not-solvable'; readonly forbids: true; readonly of: VariantName }
  | {
      readonly kind: 'variant-codes-differ';
      readonly forbids: true;
      readonly of: VariantName;
      readonly stated: StatedCodes;
      readonly held: StatedCodes;
    }
  | {
      readonly kind: 'variant-answer-in-text';
      readonly forbids: true;
      readonly of: VariantName;
      readonly fault: string;
    }
  /** A learner misses at this truth what is asked of the scenario's own. */
  | {
      readonly kind: 'variant-learners';
      readonly forbids: true;
      readonly of: VariantName;
      readonly fault: ValidityFault;
    }
  /** Par of the dearest lies too far above that of the cheapest. */
  | {
      readonly kind: 'variants-apart';
      readonly forbids: true;
      readonly by: 'minutes' | 'money';
      readonly least: VariantName;
      readonly most: VariantName;
      readonly from: number;
      readonly to: number;
    };

export type VariantName = Pick<VariantEnd, 'variant' | 'end'>;
