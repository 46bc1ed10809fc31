import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { MONITOR_TABLE } from './monitorTable.ts';

const PUMP_CODES = [
  'P0441',
  'P0442',
  'P0446',
  'P0455',
  'P0456',
  'P0457',
  'P2400',
  'P2401',
  'P2402',
  'P2404',
  'P2405',
  'P2406',
  'P2407',
] as const;
const FLAP_CODES = [
  'P2004',
  'P2006',
  'P2008',
  'P2009',
  'P2010',
  'P2014',
  'P2015',
  'P2016',
  'P2017',
  'P2018',
] as const;

/** What the service data of a rig lists. Its sentences stand in the catalogue, and in the words of the rig. */
interface ServiceOfRig {
  /** What stands beside the coil in the diagram. */
  readonly coil: string;
  readonly ports: readonly ('canister' | 'air' | 'engine')[];
  readonly vacuumTests: readonly ('trip' | 'hold' | 'reset' | 'points' | 'engine' | 'vent' | 'stroke')[];
  readonly codes: readonly ((typeof PUMP_CODES)[number] | (typeof FLAP_CODES)[number])[];
  /** Limits of the monitor by fuel level; null where they hang on nothing. */
  readonly limits: typeof MONITOR_TABLE | null;
}

export const SERVICE_OF_RIG: Readonly<Record<RigId, ServiceOfRig>> = {
  'leak-detection-pump': {
    coil: '32 Ω',
    ports: ['canister', 'air', 'engine'],
    vacuumTests: ['trip', 'hold', 'reset', 'points', 'engine', 'vent', 'stroke'],
    codes: PUMP_CODES,
    limits: MONITOR_TABLE,
  },
  'flap-actuator': {
    coil: '28 Ω',
    ports: ['air', 'engine'],
    vacuumTests: ['trip', 'hold', 'reset', 'points', 'engine', 'stroke'],
    codes: FLAP_CODES,
    limits: null,
  },
};
