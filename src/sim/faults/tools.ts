import type { FaultEntry } from './Fault.ts';

/** Faults of the bench's own tools. Weights are invented for teaching; only their order is meant. */
export const TOOL_FAULTS: readonly FaultEntry[] = [
  {
    id: 'meter-lead-open',
    item: 'meter-leads',
    mode: 'open',
    weight: 3,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'meterLeadBroken', how: 'set', value: 1 }],
  },
  {
    id: 'meter-fuse-blown',
    item: 'meter-fuses',
    mode: 'melted',
    weight: 3,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'meterMilliampFuseBlown', how: 'set', value: 1 }],
  },
  {
    id: 'meter-battery-low',
    item: 'meter-battery',
    mode: 'low',
    weight: 3,
    severity: { mildest: 0.24, worst: 0.05, spacing: 'even', unit: 'share' },
    intermittent: null,
    changes: [{ parameter: 'meterBattery', how: 'set', value: 'severity' }],
  },
  {
    id: 'hand-pump-seal-leaking',
    item: 'hand-pump',
    mode: 'seal',
    weight: 3,
    severity: { mildest: 0.15e-3, worst: 0.6e-3, spacing: 'ratio', unit: 'm' },
    intermittent: null,
    changes: [{ parameter: 'handPumpSealLeakM', how: 'set', value: 'severity' }],
  },
  {
    id: 'gauge-sticking',
    item: 'hand-pump',
    mode: 'gauge',
    weight: 2,
    severity: { mildest: 2000, worst: 8000, spacing: 'ratio', unit: 'pascal' },
    intermittent: null,
    changes: [{ parameter: 'gaugeStickPa', how: 'set', value: 'severity' }],
  },
  {
    id: 'jumper-fuse-blown',
    item: 'jumper',
    mode: 'melted',
    weight: 3,
    severity: null,
    intermittent: null,
    changes: [{ parameter: 'jumperFuseBlown', how: 'set', value: 1 }],
  },
];
