import type { FaultEntry } from './Fault.ts';
import { UNIT_FAULTS } from './unit.ts';

/** What the flap actuator's solenoid and diaphragm share with those of the leak detection pump. */
const SHARED = [
  'winding-open',
  'turns-shorted',
  'plunger-stuck',
  'plunger-stuck-drawn',
  'plunger-sticky',
  'solenoid-valve-leaking',
  'diaphragm-torn',
] as const;

/** Faults of its own: lever, return spring, position switch. Weights are invented for teaching; only their order is meant. */
export const OWN_FLAP_FAULTS: readonly FaultEntry[] = [
  {
    id: 'lever-spring-broken',
    item: 'unit',
    mode: 'return-spring',
    weight: 3,
    severity: null,
    intermittent: null,
    // The flap's own weight is left, and it pulls the way the can does.
    changes: [
      { parameter: 'diaphragmPreloadN', how: 'set', value: -4 },
      { parameter: 'diaphragmNPerM', how: 'set', value: 60 },
    ],
  },
  {
    id: 'lever-binding',
    item: 'unit',
    mode: 'lever',
    weight: 6,
    severity: { mildest: 0.88, worst: 0.15, spacing: 'even', unit: 'share' },
    intermittent: null,
    changes: [{ parameter: 'leverReachShare', how: 'set', value: 'severity' }],
  },
  {
    id: 'position-switch-stuck-open',
    item: 'unit',
    mode: 'position-switch',
    weight: 7,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'switchStuckOpen', how: 'set', value: 1 }],
  },
  {
    id: 'position-switch-stuck-closed',
    item: 'unit',
    mode: 'position-switch',
    weight: 4,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'switchStuckClosed', how: 'set', value: 1 }],
  },
  {
    id: 'position-switch-resistance',
    item: 'unit',
    mode: 'position-switch',
    weight: 5,
    severity: { mildest: 150, worst: 3000, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'switchOhms', how: 'set', value: 'severity' }],
  },
  {
    id: 'position-switch-intermittent',
    item: 'unit',
    mode: 'position-switch',
    weight: 4,
    severity: { mildest: 0.2, worst: 0.6, spacing: 'even', unit: 'share' },
    intermittent: 'each-trial',
    changes: [{ parameter: 'switchMissChance', how: 'set', value: 'severity' }],
  },
  {
    id: 'position-switch-early',
    item: 'unit',
    mode: 'adjustment',
    weight: 3,
    severity: { mildest: 0.55, worst: 0.2, spacing: 'even', unit: 'share' },
    intermittent: null,
    changes: [
      { parameter: 'leverTripShare', how: 'set', value: 'severity' },
      { parameter: 'leverResetShare', how: 'set', value: 0.1 },
    ],
  },
];

/** Faults inside the flap actuator. */
export const FLAP_UNIT_FAULTS: readonly FaultEntry[] = [
  ...UNIT_FAULTS.filter(({ id }) => SHARED.some((shared) => shared === id)),
  ...OWN_FLAP_FAULTS,
];
