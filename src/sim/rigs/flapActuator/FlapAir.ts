import { Diaphragm } from '../../components/Diaphragm.ts';
import type { BenchState } from '../../devices/BenchState.ts';
import type { RigParameters } from '../../devices/parameters.ts';
import type { AirFabric } from '../AirFabric.ts';
import type { AirNodes } from '../airVolumes.ts';
import { NO_VALVES, type UnitAir, type Vacuums, type ValvesInside } from '../RigAir.ts';

/**
 * The actuator's can: its solenoid valve joins it to the engine port or, at rest, to the air port. Vacuum in the can draws
 * the diaphragm against its return spring, and the diaphragm the lever. The room stands behind the diaphragm, so that a
 * tear lets the room's air into the can.
 */
export class FlapAir implements UnitAir {
  private readonly diaphragm: Diaphragm;

  constructor(
    fabric: AirFabric,
    at: AirNodes,
    room: number,
    private parameters: RigParameters,
  ) {
    const q = parameters;
    const seated = (bench: BenchState): boolean => bench.plunger === 'seated';
    const resting = (bench: BenchState): boolean => !seated(bench);
    fabric.bore(at.can, at.air, 'solenoidValveM', { open: resting });
    fabric.bore(at.can, at.engine, 'solenoidValveM', { open: seated });
    // The seat that should shut off the other way leaks: towards the engine port at rest, to the vent energised.
    fabric.bore(at.can, at.engine, 'solenoidValveLeakM', { open: resting, heard: 'unit' });
    fabric.bore(at.can, at.air, 'solenoidValveLeakM', { open: seated, heard: 'unit' });
    fabric.bore(at.can, room, 'diaphragmLeakM', { seen: 'unit-body', heard: 'unit' });
    this.diaphragm = fabric.network.add(
      new Diaphragm(at.can, room, {
        areaM2: q.diaphragmM2,
        preloadN: q.diaphragmPreloadN,
        rateNPerM: q.diaphragmNPerM,
        travelM: reachM(q),
      }),
    );
  }

  travel(vacuum: Vacuums): number {
    return this.diaphragm.lift(vacuum('can')) / this.parameters.diaphragmTravelM;
  }

  /** The position switch sits on the lever. */
  switchIsPast(vacuum: Vacuums, turn: 'to-close' | 'to-open'): boolean {
    const { leverTripShare, leverResetShare } = this.parameters;
    const travel = this.travel(vacuum);
    return turn === 'to-close' ? travel > leverTripShare : travel < leverResetShare;
  }

  turnValves(): boolean {
    return false;
  }

  valves(): ValvesInside {
    return NO_VALVES;
  }

  heeds(q: RigParameters): boolean {
    const { preloadN, rateNPerM, travelM } = this.diaphragm;
    return q.diaphragmPreloadN !== preloadN || q.diaphragmNPerM !== rateNPerM || reachM(q) !== travelM;
  }

  retune(parameters: RigParameters): void {
    this.parameters = parameters;
    this.diaphragm.preloadN = parameters.diaphragmPreloadN;
    this.diaphragm.rateNPerM = parameters.diaphragmNPerM;
    this.diaphragm.travelM = reachM(parameters);
  }
}

/** How far the diaphragm comes before the lever stops it, m. */
function reachM(q: RigParameters): number {
  return q.diaphragmTravelM * q.leverReachShare;
}

/**
 * Vacuum at which the lever stands at a share of its travel, Pa. Law: balance of the diaphragm, dp = (preload + k·x)/A.
 */
export function leverPa(q: RigParameters, share: number): number {
  return (q.diaphragmPreloadN + q.diaphragmNPerM * q.diaphragmTravelM * share) / q.diaphragmM2;
}
