import type { Result } from '../../../base/Result.ts';
import type { BenchState } from '../../devices/BenchState.ts';
import type { BenchSurface } from '../../devices/BenchSurface.ts';
import type { RigParameters } from '../../devices/parameters.ts';
import type { AirSite, Cavity, ExaminedPlace, LeadEnd } from '../../devices/places.ts';
import type { Refusal } from '../Action.ts';
import type { Finding, HappeningKind, HappeningPlace } from '../Observation.ts';

/** What an action may touch: the bench's discrete state, and the few things a hand hears or feels at once. */
export interface ApplyContext {
  readonly bench: BenchState;
  /** What places and things the bench has. */
  readonly surface: BenchSurface;
  happen(kind: HappeningKind, at: HappeningPlace | null): void;
  /** Vacuum at a site's volume, pascal below the room (for the hiss when something is pulled off). */
  vacuumAt(site: AirSite): number;
  /** Amps through a lead end that is about to be lifted or placed (for the spark). */
  ampsThrough(end: LeadEnd): number;
  /** Melts and renewals of parts that live in the networks. */
  renewJumperFuse(): void;
  jumperFuseMelted(): boolean;
  /** The rig's parameters for what an eye or a hand finds: a chafe is there to be seen while its contact is not. */
  readonly parameters: RigParameters;
  truckFuseMelted(): boolean;
  /** The number the meter reads now, in volts, ohms or amps; null before the first reading and over range. */
  meterReading(): number | null;
  /** Draws the rig's parameters again after an item was renewed or the unit was swapped. */
  rebuild(): void;
  /** Does lasting damage: a fault of the catalogue that was not there before, at a severity share. */
  damage(fault: string, severity: number): void;
  /** Writes down what eyes, ears or hands found. */
  find(how: Finding['how'], at: ExaminedPlace, cavity: Cavity | null, signs: Finding['signs']): void;
  /** True when air is heard to leak at a place. */
  hisses(at: ExaminedPlace): boolean;
  /** Takes the truck out for so many drive cycles. */
  drive(cycles: number): void;
}

export type Applied = Result<void, Refusal>;
