import { unreachable } from '../../../base/assert.ts';
import type { RigParameters } from '../../devices/parameters.ts';
import type { AirVolume } from '../airVolumes.ts';
import type { RigAir } from '../RigAir.ts';
import { addBreathingAndVacuum } from '../truckAir.ts';
import { FlapAir, leverPa } from './FlapAir.ts';

const UNIT = ['air', 'engine', 'can'] as const;
const TRUCK = ['air-hose', 'engine-hose', 'reservoir'] as const;

/** The actuator between an air hose to a filter and an engine hose to a vacuum reservoir. */
export const FLAP_RIG_AIR: RigAir = {
  unitVolumes: UNIT,
  truckVolumes: TRUCK,
  switchSide: 'can',
  volumesOfItem: {
    unit: UNIT,
    'air-hose': ['air-hose'],
    'engine-hose': ['engine-hose'],
    filter: ['air-hose'],
    'hand-pump': ['pump-hose'],
  },
  sizeOf,
  buildUnit: (fabric, at, { room }, parameters) => new FlapAir(fabric, at, room, parameters()),
  buildTruck: addBreathingAndVacuum,
  levels: (q, roomPa) =>
    [q.leverTripShare, q.leverResetShare].map((share) => ({
      volume: 'can',
      pa: roomPa - Math.max(leverPa(q, share), 0),
    })),
  strains: [],
};

function sizeOf(volume: AirVolume, q: RigParameters): number {
  const own = volume as (typeof UNIT)[number] | (typeof TRUCK)[number];
  switch (own) {
    case 'air':
      return q.airPassageM3;
    case 'engine':
      return q.enginePassageM3;
    case 'can':
      return q.driveChamberM3;
    case 'air-hose':
      return q.airHoseM3;
    case 'engine-hose':
      return q.engineHoseM3;
    case 'reservoir':
      return q.reservoirM3;
    default:
      return unreachable(own);
  }
}
