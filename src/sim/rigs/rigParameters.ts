import { assert } from '../../base/assert.ts';
import type { AcquiredFault } from '../devices/BenchState.ts';
import type { ItemId } from '../devices/items.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { WhichUnit } from '../devices/places.ts';
import { applyFault } from '../faults/applyFault.ts';
import { faultById } from '../faults/catalogue.ts';
import type { RigDefinition } from './RigDefinition.ts';
import { drawnParameters } from './tolerances.ts';

/** A fault of the catalogue with its severity as a share (0 to 1) of the catalogue's range. */
export interface FaultChoice {
  readonly fault: string;
  readonly severity: number;
  /** Shows its bad face only by chance while the harness is moved, and stays as the movement left it. */
  readonly whenMoved?: boolean;
  /** Comes back in a few drives after the item was renewed, unless the item of this root-cause fault was renewed too. */
  readonly root?: string;
}

/** What the bench's state adds to the faults a world began with. */
export interface PresentState {
  readonly renewed: readonly ItemId[];
  readonly acquired: readonly AcquiredFault[];
  /** One for each of the world's faults, true or missing while its bad face shows. */
  readonly faces: readonly boolean[];
  readonly unit: WhichUnit;
  /** Items that were new already as the job began: drawn afresh, with whatever faults the world began with. */
  readonly renewedBefore?: readonly ItemId[];
}

export const AS_BUILT: PresentState = { renewed: [], acquired: [], faces: [], unit: 'truck' };

/**
 * The rig's parameters as they stand: tolerances from the seed, the faults of items not yet renewed, damage done since.
 * The known-good unit has tolerances of its own and none of the unit's faults.
 * Errors: asserts that every fault is in the catalogue (a scenario is checked before it gets here).
 */
export function rigParameters(
  rig: RigDefinition,
  seed: string,
  faults: readonly FaultChoice[],
  { renewed, acquired, faces, unit, renewedBefore = [] }: PresentState,
): RigParameters {
  const parameters = drawnParameters(rig, seed, [...renewedBefore, ...renewed], unit);
  const apply = (id: string, severity: number): void => {
    const fault = faultById(id);
    assert(fault !== undefined, 'fault is in the catalogue', { fault: id });
    applyFault(parameters, fault, severity);
  };
  for (const [i, { fault, severity }] of faults.entries()) {
    const item = faultById(fault)?.item;
    const cured = item !== undefined && renewed.includes(item);
    const elsewhere = item === 'unit' && unit === 'known-good';
    if (!cured && !elsewhere && faces[i] !== false) apply(fault, severity);
  }
  for (const damage of acquired) {
    // Nobody renews the known-good unit: what it has suffered stays.
    const lasts = damage.item === 'unit' && damage.unit === 'known-good';
    const there = lasts || damage.renewals === timesRenewed(renewed, damage.item);
    const fitted = damage.item !== 'unit' || damage.unit === unit;
    if (there && fitted) apply(damage.fault, damage.severity);
  }
  return parameters;
}

/** How often an item has been renewed. */
export function timesRenewed(renewed: readonly ItemId[], item: ItemId): number {
  return renewed.filter((name) => name === item).length;
}
