import type { FaultEntry } from './Fault.ts';

/** Root causes: what spoils a new part again. They change only what an eye finds. Weights are invented for teaching; only their order is meant. */
export const ROOT_CAUSES: readonly FaultEntry[] = [
  {
    id: 'charcoal-in-hose',
    item: 'canister',
    mode: 'charcoal-out',
    weight: 1,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'charcoalInHose', how: 'set', value: 1 }],
  },
  {
    id: 'water-in-filter',
    item: 'filter',
    mode: 'water',
    weight: 1,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'waterInFilter', how: 'set', value: 1 }],
  },
  {
    id: 'fuel-in-canister',
    item: 'canister',
    mode: 'fuel-soaked',
    weight: 1,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'fuelInCanister', how: 'set', value: 1 }],
  },
];
