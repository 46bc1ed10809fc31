import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';

/**
 * What the coach has to say. It follows from the work order, what was shown and what was done, never from what is wrong:
 * with the same log it is the same whatever the truth. `text` makes a question, a test and a procedure of it.
 */
export type Advice =
  /** A tool is about to be trusted, or has surprised, that nobody has tried. */
  | { readonly kind: 'prove-tool'; readonly test: StandardTestId }
  /** The test that is expected to tell the most for its minutes. */
  | { readonly kind: 'do-test'; readonly test: StandardTestId }
  /** A test that was done too few times to rule out what comes and goes. */
  | {
      readonly kind: 'repeat-test';
      readonly test: StandardTestId;
      readonly done: number;
      readonly of: number;
    }
  /** The evidence stands for one item: decide, and cite the entries that show it. The item is not named. */
  | { readonly kind: 'decide' }
  /** No test at hand tells more. */
  | { readonly kind: 'nothing-left' }
  /** The verdict is given: prove the repair. */
  | { readonly kind: 'prove-repair' };
