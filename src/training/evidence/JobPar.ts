import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';

/** What a careful job of a scenario takes, from the work order to the road test after the repair. */
export interface JobPar {
  /** The plan of tests, tool proofs among them, in the order done. */
  readonly tests: readonly StandardTestId[];
  /** Book minutes in all: the plan, the repeats that the rules ask for, the renewal, the test of the new part, the drive. */
  readonly minutes: number;
  /** Dollars: the parts that are needed, and what the tests use up. */
  readonly money: number;
  /** Whether the plan proves an item; false where the tests run out first. */
  readonly proven: boolean;
}
