import { unreachable } from '../../../base/assert.ts';
import type { RigParameters } from '../../devices/parameters.ts';
import type { AirVolume } from '../airVolumes.ts';
import type { RigAir } from '../RigAir.ts';
import { addBreathingAndVacuum } from '../truckAir.ts';
import { PumpAir } from './PumpAir.ts';
import { addVapourSide, vapourSpace } from './vapourSide.ts';

const UNIT = ['canister', 'air', 'engine', 'drive', 'pump', 'delay'] as const;
const TRUCK = ['canister-hose', 'air-hose', 'engine-hose', 'canister-vessel', 'tank', 'reservoir'] as const;

/** The pump on its vapour side, with an air hose to a filter and an engine hose to a vacuum reservoir. */
export const PUMP_RIG_AIR: RigAir = {
  unitVolumes: UNIT,
  truckVolumes: TRUCK,
  switchSide: 'canister',
  volumesOfItem: {
    unit: UNIT,
    'canister-hose': ['canister-hose'],
    'air-hose': ['air-hose'],
    'engine-hose': ['engine-hose'],
    filter: ['air-hose'],
    canister: ['canister-vessel'],
    'filler-cap': ['tank'],
    'tank-seal': ['tank'],
    'purge-valve': ['canister-vessel'],
    'hand-pump': ['pump-hose'],
  },
  sizeOf,
  buildUnit: (fabric, at, { room }, parameters) => new PumpAir(fabric, at, room, parameters()),
  buildTruck: (fabric, at, ends, parameters) => {
    addVapourSide(fabric, at, ends, parameters);
    addBreathingAndVacuum(fabric, at, ends, parameters);
  },
  levels: (q, roomPa) => [
    { volume: 'canister', pa: roomPa - q.tripPa },
    { volume: 'canister', pa: roomPa - q.tripPa + q.differentialPa },
    { volume: 'delay', pa: roomPa - q.ventShutPa },
    { volume: 'delay', pa: roomPa - q.ventOpenPa },
  ],
  strains: [
    {
      in: ['canister'],
      by: 'vacuum',
      beyond: 'capsuleTearsPa',
      fault: 'capsule-torn',
      severity: 0,
      heardAt: null,
    },
    {
      in: ['canister-vessel', 'tank'],
      by: 'pressure',
      beyond: 'canisterBurstsPa',
      fault: 'canister-cracked',
      severity: 1,
      heardAt: 'canister',
    },
  ],
};

type OwnVolume = (typeof UNIT)[number] | (typeof TRUCK)[number];

function sizeOf(volume: AirVolume, q: RigParameters, fuelLevel: number): number {
  const own = volume as OwnVolume;
  switch (own) {
    case 'canister':
      return q.canisterPassageM3;
    case 'air':
      return q.airPassageM3;
    case 'engine':
      return q.enginePassageM3;
    case 'drive':
      return q.driveChamberM3;
    case 'pump':
      return q.pumpChamberM3;
    case 'delay':
      return q.delayChamberM3;
    case 'canister-hose':
      return q.canisterHoseM3;
    case 'air-hose':
      return q.airHoseM3;
    case 'engine-hose':
      return q.engineHoseM3;
    case 'canister-vessel':
      return q.canisterM3;
    case 'tank':
      return vapourSpace(fuelLevel, q);
    case 'reservoir':
      return q.reservoirM3;
    default:
      return unreachable(own);
  }
}
