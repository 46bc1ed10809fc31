import type { TestReadings } from '../../../training/proof/FaultReadings.ts';
import type { BackRoomFailure } from '../proof/ProofState.ts';

/** How far the reading of the two benches has come. */
export type ReadingsState =
  /** No fault is set. */
  | { readonly kind: 'nothing' }
  /** `tests` of the newest faults, in the order worked; `before` are those of the faults before, until there are newer. */
  | {
      readonly kind: 'reading';
      readonly tests: readonly TestReadings[];
      readonly before: readonly TestReadings[];
    }
  | { readonly kind: 'read'; readonly tests: readonly TestReadings[] }
  | { readonly kind: 'failed'; readonly failure: BackRoomFailure };
