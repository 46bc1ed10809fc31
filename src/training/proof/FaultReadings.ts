import type { ItemId } from '../../sim/devices/items.ts';
import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { Environment } from '../evidence/environment.ts';

/** A bench to be read: its rig and where it stands, the seed of its tolerances, and what is wrong on it. */
export interface ReadBench {
  readonly environment: Environment;
  readonly seed: string;
  /** Parts that were renewed before the job, as its work order says. */
  readonly renewedBefore?: readonly ItemId[];
  readonly faults: readonly FaultChoice[];
}

/**
 * Whether a reading gives a fault away. tells: no good bench reads so. own-only: this bench reads otherwise than without the
 * fault, but other good ones may read so too. same: no instrument shows a difference.
 */
export type Telling = 'tells' | 'own-only' | 'same';

/** What one read mark of a test showed without the faults and with them; repeats follow one another. */
export interface MarkReadings {
  /** `test/mark`. */
  readonly setUp: string;
  readonly good: readonly Outcome[];
  readonly faulted: readonly Outcome[];
  /** What other good benches showed, with other tolerances. */
  readonly others: readonly Outcome[];
  readonly telling: Telling;
}

/** What one standard test showed on the good bench and on the faulted one. */
export interface TestReadings {
  readonly test: StandardTestId;
  readonly marks: readonly MarkReadings[];
  readonly telling: Telling;
}
