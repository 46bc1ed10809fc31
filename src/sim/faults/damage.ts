import type { FaultEntry } from './Fault.ts';

/** Damage that only a hand on the bench can do: never there when a job begins. Weights are invented for teaching; only their order is meant. */
export const BENCH_DAMAGE: readonly FaultEntry[] = [
  {
    id: 'wire-1-pierced',
    item: 'feed-wire',
    mode: 'pierced',
    weight: 0,
    severity: { mildest: 50000, worst: 2000, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'pierce1Ohms', how: 'set', value: 'severity' }],
  },
  {
    id: 'wire-2-pierced',
    item: 'ground-wire',
    mode: 'pierced',
    weight: 0,
    severity: { mildest: 50000, worst: 2000, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'pierce2Ohms', how: 'set', value: 'severity' }],
  },
  {
    id: 'wire-3-pierced',
    item: 'sense-wire',
    mode: 'pierced',
    weight: 0,
    severity: { mildest: 50000, worst: 2000, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'pierce3Ohms', how: 'set', value: 'severity' }],
  },
  {
    id: 'plain-lead-burnt',
    item: 'plain-lead',
    mode: 'burnt',
    weight: 0,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'plainLeadBurnt', how: 'set', value: 1 }],
  },
  {
    id: 'jumper-contacts-burnt',
    item: 'jumper',
    mode: 'burnt-contacts',
    weight: 0,
    severity: { mildest: 0.5, worst: 20, spacing: 'ratio', unit: 'ohm' },
    intermittent: null,
    changes: [{ parameter: 'jumperOhms', how: 'add', value: 'severity' }],
  },
];
