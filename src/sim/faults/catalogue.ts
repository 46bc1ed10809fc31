import type { FaultEntry } from './Fault.ts';

/** A broken conductor: far above an open contact's leakage (1 GΩ), so that its far end does not float half way. */
const OPEN_OHMS = 1e11;

/** Every fault of this version. Weights are invented for teaching; only their order is meant. */
export const FAULTS: readonly FaultEntry[] = [
  {
    id: 'winding-open',
    item: 'unit',
    mode: 'winding',
    weight: 5,
    severity: null,
    changes: [{ parameter: 'coilSeriesOhms', how: 'set', value: OPEN_OHMS }],
  },
  {
    id: 'plunger-stuck',
    item: 'unit',
    mode: 'plunger',
    weight: 4,
    severity: null,
    changes: [{ parameter: 'plungerStuckAtRest', how: 'set', value: 1 }],
  },
  {
    id: 'plunger-sticky',
    item: 'unit',
    mode: 'plunger',
    weight: 4,
    severity: { min: 0.2, max: 0.6, spacing: 'even', unit: 'share' },
    changes: [{ parameter: 'plungerStickChance', how: 'set', value: 'severity' }],
  },
  {
    id: 'switch-stuck-open',
    item: 'unit',
    mode: 'vacuum-switch',
    weight: 9,
    severity: null,
    changes: [{ parameter: 'switchStuckOpen', how: 'set', value: 1 }],
  },
  {
    id: 'switch-stuck-closed',
    item: 'unit',
    mode: 'vacuum-switch',
    weight: 4,
    severity: null,
    changes: [{ parameter: 'switchStuckClosed', how: 'set', value: 1 }],
  },
  {
    id: 'capsule-torn',
    item: 'unit',
    mode: 'capsule',
    weight: 8,
    severity: { min: 0.25e-3, max: 1e-3, spacing: 'ratio', unit: 'm' },
    changes: [{ parameter: 'capsuleLeakM', how: 'set', value: 'severity' }],
  },
  {
    id: 'vent-seat-leaking',
    item: 'unit',
    mode: 'vent-seat',
    weight: 6,
    severity: { min: 0.4e-3, max: 1.5e-3, spacing: 'ratio', unit: 'm' },
    changes: [{ parameter: 'ventSeatLeakM', how: 'set', value: 'severity' }],
  },
  {
    id: 'feed-open',
    item: 'feed-wire',
    mode: 'open',
    weight: 5,
    severity: null,
    changes: [{ parameter: 'feedWireOhms', how: 'set', value: OPEN_OHMS }],
  },
  {
    id: 'ground-resistance',
    item: 'ground-wire',
    mode: 'resistance',
    weight: 6,
    severity: { min: 1.5, max: 45, spacing: 'ratio', unit: 'ohm' },
    changes: [{ parameter: 'groundWireOhms', how: 'add', value: 'severity' }],
  },
  {
    id: 'sense-open',
    item: 'sense-wire',
    mode: 'open',
    weight: 6,
    severity: null,
    changes: [{ parameter: 'senseWireOhms', how: 'set', value: OPEN_OHMS }],
  },
  {
    id: 'sense-to-ground',
    item: 'sense-wire',
    mode: 'to-ground',
    weight: 4,
    severity: { min: 0.5, max: 300, spacing: 'ratio', unit: 'ohm' },
    changes: [{ parameter: 'senseToGroundOhms', how: 'set', value: 'severity' }],
  },
  {
    id: 'fuse-blown',
    item: 'fuse',
    mode: 'melted',
    weight: 5,
    severity: null,
    changes: [{ parameter: 'fuseBlown', how: 'set', value: 1 }],
  },
  {
    id: 'hand-pump-seal-leaking',
    item: 'hand-pump',
    mode: 'seal',
    weight: 3,
    severity: { min: 0.15e-3, max: 0.6e-3, spacing: 'ratio', unit: 'm' },
    changes: [{ parameter: 'handPumpSealLeakM', how: 'set', value: 'severity' }],
  },
  {
    id: 'meter-lead-open',
    item: 'meter-leads',
    mode: 'open',
    weight: 3,
    severity: null,
    changes: [{ parameter: 'meterLeadBroken', how: 'set', value: 1 }],
  },
];

const BY_ID = new Map(FAULTS.map((fault) => [fault.id, fault]));

export function faultById(id: string): FaultEntry | undefined {
  return BY_ID.get(id);
}
