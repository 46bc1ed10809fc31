import type { Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { RigId } from '../devices/BenchSurface.ts';
import type { ItemId } from '../devices/items.ts';
import type { FaultChoice } from '../rigs/rigParameters.ts';
import type { Action, Refusal } from './Action.ts';
import type { InsideObservation, Observation } from './Observation.ts';

/**
 * The deterministic world as everything outside `sim` sees it. Moved only by `apply` and `advanceTo`; how time is cut
 * into `advanceTo` calls changes nothing.
 */
export interface WorldPort {
  readonly tick: Tick;
  /** Does one action at the present tick. Refused actions leave the world as it was. */
  apply(action: Action): Result<void, Refusal>;
  /** Lets time pass until `tick` (not before the present). */
  advanceTo(tick: Tick): void;
  observe(): Observation;
  inside(): InsideObservation;
  /** Plain JSON state; `World.restore(spec, snapshot)` continues to the same last bit. */
  snapshot(): unknown;
  /** SHA-256 of the state at the present tick. */
  hash(): string;
}

export type { FaultChoice } from '../rigs/rigParameters.ts';

/** What a world is made from. The same spec and actions give the same world on every machine. */
export interface WorldSpec {
  readonly seed: string;
  /** Which rig stands on the bench; the leak detection pump where none is named. */
  readonly rig?: RigId;
  readonly faults: readonly FaultChoice[];
  readonly ambientC: number;
  readonly altitudeM: number;
  readonly fuelLevel: number;
  /** Items that were renewed before the work order was written: each is a new draw of its own tolerances. */
  readonly renewedBefore?: readonly ItemId[];
  /** Drives with the faults in before the work order was written: they fill the controller's memory. */
  readonly drives?: DrivesBefore;
}

export interface DrivesBefore {
  /** Drive cycles, 0 to 40. */
  readonly cycles: number;
  /** True when the tank was filled just before the first of them. */
  readonly refuelled: boolean;
}
