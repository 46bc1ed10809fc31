import type { ItemId } from '../../devices/items.ts';
import { COMMON_TOLERANCES, FLOW_4_PERCENT, TOOL_TOLERANCES, type Tolerance } from '../tolerances.ts';

export const PUMP_TOLERANCES: Readonly<Partial<Record<ItemId, readonly Tolerance[]>>> = {
  unit: [
    { parameter: 'coilOhmsAt20C', share: 0.06 },
    { parameter: 'pullInAmps', share: 0.15 },
    { parameter: 'dropOutAmps', share: 0.15 },
    { parameter: 'tripPa', absolute: 200 },
    { parameter: 'differentialPa', absolute: 60 },
    { parameter: 'ventSeatM', share: FLOW_4_PERCENT },
    { parameter: 'solenoidValveM', share: FLOW_4_PERCENT },
    { parameter: 'delayBleedM', share: FLOW_4_PERCENT },
    { parameter: 'canisterPassageM3', share: 0.05 },
    { parameter: 'airPassageM3', share: 0.05 },
    { parameter: 'enginePassageM3', share: 0.05 },
    { parameter: 'driveChamberM3', share: 0.05 },
    { parameter: 'pumpChamberM3', share: 0.05 },
    { parameter: 'delayChamberM3', share: 0.05 },
    { parameter: 'diaphragmTravelM', share: 0.02 },
    { parameter: 'pumpCheckM', share: FLOW_4_PERCENT },
    { parameter: 'delayCheckM', share: FLOW_4_PERCENT },
  ],
  ...COMMON_TOLERANCES,
  'canister-hose': [{ parameter: 'canisterHoseM3', share: 0.05 }],
  canister: [{ parameter: 'canisterM3', share: 0.05 }],
};

/** The truck's own body, and the bench's tools. */
export const PUMP_LASTING: readonly Tolerance[] = [
  { parameter: 'tankM3', share: 0.05 },
  { parameter: 'reservoirM3', share: 0.05 },
  { parameter: 'seepM', share: FLOW_4_PERCENT },
  ...TOOL_TOLERANCES,
];
