import { assert } from '../../base/assert.ts';
import type { ItemId } from '../devices/items.ts';
import type { RigParameters } from '../devices/parameters.ts';
import { applyFault } from '../faults/applyFault.ts';
import { faultById } from '../faults/catalogue.ts';
import { drawnParameters } from './tolerances.ts';

/** A fault of the catalogue with its severity as a share (0 to 1) of the catalogue's range. */
export interface FaultChoice {
  readonly fault: string;
  readonly severity: number;
}

/**
 * The rig's parameters as they stand: tolerances from the seed, the faults of items not yet renewed, the meter's lead.
 * Errors: asserts that every fault is in the catalogue (a scenario is checked before it gets here).
 */
export function rigParameters(
  seed: string,
  faults: readonly FaultChoice[],
  renewed: readonly ItemId[],
): RigParameters {
  const parameters = drawnParameters(seed, renewed);
  for (const choice of faults) {
    const fault = faultById(choice.fault);
    assert(fault !== undefined, 'fault is in the catalogue', { fault: choice.fault });
    if (!renewed.includes(fault.item)) applyFault(parameters, fault, choice.severity);
  }
  return parameters;
}
