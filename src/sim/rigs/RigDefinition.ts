import type { BenchSurface, RigId } from '../devices/BenchSurface.ts';
import type { ControllerPlan } from '../devices/controller/ControllerPlan.ts';
import type { ItemId } from '../devices/items.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { FaultEntry } from '../faults/Fault.ts';
import type { RigAir } from './RigAir.ts';
import type { StandardTest } from './standardTests/StandardTest.ts';
import type { Tolerance } from './tolerances.ts';

/**
 * A rig as one value: what it has, how its air goes, its numbers, its faults, what its controller watches and the tests
 * that its service data gives. Circuit and tools are those of the bench: every rig hangs on the same three wires.
 */
export interface RigDefinition {
  readonly id: RigId;
  readonly surface: BenchSurface;
  /** Nominal values. */
  readonly parameters: Readonly<RigParameters>;
  /** Which item carries which tolerances. */
  readonly tolerances: Readonly<Partial<Record<ItemId, readonly Tolerance[]>>>;
  /** Tolerances of what nobody renews. */
  readonly lasting: readonly Tolerance[];
  readonly faults: readonly FaultEntry[];
  readonly air: RigAir;
  readonly controller: ControllerPlan;
  /** What comes under standard test ids; an id means the same question at every rig that has it. */
  readonly tests: readonly StandardTest[];
}
