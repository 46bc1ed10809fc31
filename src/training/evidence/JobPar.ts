import type { ItemId } from '../../sim/devices/items.ts';
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

/** One thing that par pays for, with its book minutes and dollars. */
export type ParLine = { readonly minutes: number; readonly money: number } & (
  | { readonly kind: 'test'; readonly test: StandardTestId; readonly again: boolean }
  /** Click and vacuum trials that are missing to as many as the rules ask for, and looks at what is cheap and likely. */
  | { readonly kind: 'trials' | 'looks' | 'verdict' | 'road' }
  | { readonly kind: 'tool-renewed' | 'repair'; readonly item: ItemId }
);

/** Par with what it is made up of, in the order done; the lines add up to it. */
export interface ParInLines extends JobPar {
  readonly lines: readonly ParLine[];
}
