import type { ItemId } from '../../devices/items.ts';
import { COMMON_TOLERANCES, FLOW_4_PERCENT, TOOL_TOLERANCES, type Tolerance } from '../tolerances.ts';

export const FLAP_TOLERANCES: Readonly<Partial<Record<ItemId, readonly Tolerance[]>>> = {
  unit: [
    { parameter: 'coilOhmsAt20C', share: 0.06 },
    { parameter: 'pullInAmps', share: 0.15 },
    { parameter: 'dropOutAmps', share: 0.15 },
    { parameter: 'solenoidValveM', share: FLOW_4_PERCENT },
    { parameter: 'airPassageM3', share: 0.05 },
    { parameter: 'enginePassageM3', share: 0.05 },
    { parameter: 'driveChamberM3', share: 0.05 },
    { parameter: 'diaphragmPreloadN', share: 0.03 },
    { parameter: 'diaphragmNPerM', share: 0.03 },
    { parameter: 'diaphragmTravelM', share: 0.02 },
    { parameter: 'leverTripShare', absolute: 0.015 },
    { parameter: 'leverResetShare', absolute: 0.02 },
  ],
  ...COMMON_TOLERANCES,
};

/** The truck's vacuum reservoir, and the bench's tools. */
export const FLAP_LASTING: readonly Tolerance[] = [
  { parameter: 'reservoirM3', share: 0.05 },
  ...TOOL_TOLERANCES,
];
