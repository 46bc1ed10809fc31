import { type FaultEntry, OPEN_OHMS } from './Fault.ts';

/** Faults inside the controller. Weights are invented for teaching; only their order is meant. */
export const CONTROLLER_FAULTS: readonly FaultEntry[] = [
  {
    id: 'driver-dead',
    item: 'controller',
    mode: 'driver',
    weight: 2,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'driverDead', how: 'set', value: 1 }],
  },
  {
    id: 'driver-stuck-on',
    item: 'controller',
    mode: 'driver',
    weight: 1,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'driverStuckOn', how: 'set', value: 1 }],
  },
  {
    id: 'pull-up-lost',
    item: 'controller',
    mode: 'pull-up',
    weight: 2,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'sensePullUpOhms', how: 'set', value: OPEN_OHMS }],
  },
  {
    id: 'sense-input-damaged',
    item: 'controller',
    mode: 'sense-input',
    weight: 1,
    severity: { mildest: 4000, worst: 200, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'senseDividerOhms', how: 'set', value: 'severity' }],
  },
];
