import type { FaultEntry } from './Fault.ts';

/** Faults of battery, key and fuse. Weights are invented for teaching; only their order is meant. */
export const SUPPLY_FAULTS: readonly FaultEntry[] = [
  {
    id: 'fuse-blown',
    item: 'fuse',
    mode: 'melted',
    weight: 5,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'fuseBlown', how: 'set', value: 1 }],
  },
  {
    id: 'battery-weak',
    item: 'battery',
    mode: 'weak',
    weight: 3,
    severity: { mildest: 0.5, worst: 0.1, spacing: 'even', unit: 'share' },
    intermittent: null,
    changes: [
      { parameter: 'batteryCharge', how: 'set', value: 'severity' },
      { parameter: 'batteryOhms', how: 'set', value: 0.04 },
    ],
  },
  {
    id: 'key-contacts-burnt',
    item: 'key-switch',
    mode: 'burnt-contacts',
    weight: 2,
    severity: { mildest: 2, worst: 20, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'keyContactOhms', how: 'set', value: 'severity' }],
  },
];
