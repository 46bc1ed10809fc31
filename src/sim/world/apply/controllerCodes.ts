import { err, ok } from '../../../base/Result.ts';
import type { BenchState } from '../../devices/BenchState.ts';
import { cleared } from '../../devices/controller/memoryTransitions.ts';
import {
  type AirSite,
  type Fitting,
  HOSE_ENDS,
  type HoseEnd,
  LEAD_ENDS,
  type LeadPoint,
  UNIT_PORTS,
} from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

const MOST_CYCLES = 20;

/** Clears the controller's pending and stored codes through the reader. Permanent codes stay. */
export function clearCodes({ bench }: ApplyContext): Applied {
  if (bench.key === 'off') return err('reader-needs-key-on');
  bench.controller = cleared(bench.controller);
  return ok(undefined);
}

/**
 * Takes the truck out for drive cycles. Tools must be off it and the key off; a plug or a hose left off goes along as
 * it is, and fails on the road as it would.
 */
export function roadTest({ bench, drive }: ApplyContext, cycles: number): Applied {
  if (!Number.isInteger(cycles) || cycles < 1 || cycles > MOST_CYCLES) return err('cannot-be-reached');
  if (bench.key !== 'off') return err('key-must-be-off');
  if (toolsOnTruck(bench)) return err('tools-on-the-truck');
  drive(cycles);
  return ok(undefined);
}

const OWN_HOSES: readonly Fitting[] = ['canister-hose', 'air-hose', 'engine-hose'];
const TRUCK_ENDS: readonly HoseEnd[] = ['canister-hose-end', 'air-hose-end', 'engine-hose-end'];
const TRUCK_SITES: readonly AirSite[] = [
  ...UNIT_PORTS,
  ...HOSE_ENDS.filter((end) => TRUCK_ENDS.includes(end)),
];
const OFF_TRUCK: readonly LeadPoint[] = [
  'supply-positive',
  'supply-negative',
  'meter-red-tip',
  'meter-black-tip',
];

function toolsOnTruck(bench: BenchState): boolean {
  const lead = LEAD_ENDS.some((end) => {
    const point = bench.leads[end];
    return point !== null && !OFF_TRUCK.includes(point);
  });
  const fitting = TRUCK_SITES.some((site) => {
    const there = bench.sites[site];
    return there !== null && !OWN_HOSES.includes(there);
  });
  return lead || fitting || bench.pins.some((pin) => pin);
}
