import type { Result } from '../../../base/Result.ts';
import type { BenchState } from '../../devices/BenchState.ts';
import type { AirSite, LeadEnd } from '../../devices/places.ts';
import type { Refusal } from '../Action.ts';
import type { HappeningKind } from '../Observation.ts';

/** What an action may touch: the bench's discrete state, and the few things a hand hears or feels at once. */
export interface ApplyContext {
  readonly bench: BenchState;
  happen(kind: HappeningKind): void;
  /** Vacuum at a site's volume, pascal below the room (for the hiss when something is pulled off). */
  vacuumAt(site: AirSite): number;
  /** Amps through a lead end that is about to be lifted or placed (for the spark). */
  ampsThrough(end: LeadEnd): number;
  /** Melts and renewals of parts that live in the networks. */
  renewJumperFuse(): void;
  jumperFuseMelted(): boolean;
  /** Draws the rig's parameters again after an item was renewed. */
  rebuild(): void;
}

export type Applied = Result<void, Refusal>;
