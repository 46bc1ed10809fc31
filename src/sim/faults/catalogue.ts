import { CONTROLLER_FAULTS } from './controller.ts';
import { BENCH_DAMAGE } from './damage.ts';
import type { FaultEntry } from './Fault.ts';
import { FLAP_UNIT_FAULTS, OWN_FLAP_FAULTS } from './flapActuator.ts';
import { HARNESS_FAULTS } from './harness.ts';
import { HOSE_AND_VESSEL_FAULTS } from './hosesAndVessel.ts';
import { ROOT_CAUSES } from './roots.ts';
import { SUPPLY_FAULTS } from './supply.ts';
import { TOOL_FAULTS } from './tools.ts';
import { UNIT_FAULTS } from './unit.ts';

/** Faults of the leak detection pump and of all that hangs on it, by where they sit. */
export const PUMP_FAULTS: readonly FaultEntry[] = [
  ...UNIT_FAULTS,
  ...HARNESS_FAULTS,
  ...SUPPLY_FAULTS,
  ...CONTROLLER_FAULTS,
  ...HOSE_AND_VESSEL_FAULTS,
  ...ROOT_CAUSES,
  ...TOOL_FAULTS,
  ...BENCH_DAMAGE,
];

/** Faults of hoses and filter that need no vapour side. */
const HOSE_FAULTS = HOSE_AND_VESSEL_FAULTS.filter(({ item }) =>
  ['air-hose', 'engine-hose', 'filter'].includes(item),
);

/** Faults of the flap actuator and of all that hangs on it, by where they sit. */
export const FLAP_FAULTS: readonly FaultEntry[] = [
  ...FLAP_UNIT_FAULTS,
  ...HARNESS_FAULTS,
  ...SUPPLY_FAULTS,
  ...CONTROLLER_FAULTS,
  ...HOSE_FAULTS,
  ...ROOT_CAUSES.filter(({ item }) => item === 'filter'),
  ...TOOL_FAULTS,
  ...BENCH_DAMAGE,
];

/** Every fault of this version, whichever rig it belongs to. */
export const FAULTS: readonly FaultEntry[] = [...PUMP_FAULTS, ...OWN_FLAP_FAULTS];

const BY_ID = new Map(FAULTS.map((fault) => [fault.id, fault]));
const ROOTS = new Set(ROOT_CAUSES.map(({ id }) => id));

export function faultById(id: string): FaultEntry | undefined {
  return BY_ID.get(id);
}

/** True for a root cause: it changes nothing but what an eye finds, and may stand behind another fault. */
export function isRootCause(id: string): boolean {
  return ROOTS.has(id);
}
