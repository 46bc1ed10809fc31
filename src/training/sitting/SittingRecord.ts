import { TICKS_PER_SECOND } from '../../base/ticks.ts';
import type { DrawnVariant } from '../scenario/Variant.ts';
import type { TimedAction } from './SittingAction.ts';
import type { SittingMode } from './SittingView.ts';

export const PROGRAM_VERSION = '0.1.0';

/** No job lasts longer than a day. */
export const MAX_TICK = 24 * 3600 * TICKS_PER_SECOND;

/**
 * A sitting as its actions: the scenario's hash, the seed and what was done at which tick. Nothing in it states a
 * result but the claim, and the claim counts only as far as a replay bears it out. `endHash` is the hash of the world
 * at the end, so that a replay can show that it saw the same readings to the last digit.
 */
export interface SittingRecord {
  readonly program: 'known-good';
  readonly format: 1;
  readonly version: string;
  readonly scenario: { readonly id: string; readonly contentHash: string };
  /** Where the scenario has variants: which truth this sitting had, so that whoever has the scenario can draw it again. */
  readonly variant?: DrawnVariant;
  readonly seed: string;
  readonly mode: SittingMode;
  readonly actions: readonly TimedAction[];
  readonly endTick: number;
  readonly endHash: string;
  /** Total score as the program that wrote the record claims it; null while the job is open. */
  readonly claimedScore: number | null;
}
