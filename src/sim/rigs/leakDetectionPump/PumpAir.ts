import { Diaphragm } from '../../components/Diaphragm.ts';
import type { BenchState } from '../../devices/BenchState.ts';
import { ventTable } from '../../devices/modes/ventSeat.ts';
import type { RigParameters } from '../../devices/parameters.ts';
import type { AirFabric } from '../AirFabric.ts';
import type { AirNodes, AirVolume } from '../airVolumes.ts';
import type { UnitAir, Vacuums, ValvesInside } from '../RigAir.ts';

/**
 * A check counts as open once its leaf has lifted all the way, so much beyond its cracking pressure, Pa. The last trickle
 * past a leaf that hardly lifts goes on for minutes and would look like pumping.
 */
const CHECK_LIFT_PA = 50;

/** Whether the vent seat stands shut: as its own diaphragm has it, unless it is stuck. */
export function ventStandsShut(bench: BenchState, q: RigParameters): boolean {
  if (q.ventStuckOpen === 1) return false;
  return q.ventStuckShut === 1 || bench.vent === 'shut';
}

/** The unit's chambers: vent seat and its delay, solenoid valve, pump diaphragm and its two checks, switch capsule. */
export class PumpAir implements UnitAir {
  private readonly diaphragm: Diaphragm;

  constructor(
    fabric: AirFabric,
    at: AirNodes,
    room: number,
    private parameters: RigParameters,
  ) {
    const q = parameters;
    const seated = (bench: BenchState): boolean => bench.plunger === 'seated';
    const ventShut = (bench: BenchState): boolean => ventStandsShut(bench, this.parameters);
    fabric.bore(at.canister, at.air, 'ventSeatM', { open: (bench) => !ventShut(bench) });
    fabric.bore(at.canister, at.air, 'ventSeatLeakM', { open: ventShut, heard: 'unit' });
    fabric.bore(at.drive, at.air, 'solenoidValveM', { open: (bench) => !seated(bench) });
    fabric.bore(at.drive, at.engine, 'solenoidValveM', { open: seated });
    // The seat that should shut off the other way leaks: towards the engine port at rest, to the air passage energised.
    fabric.bore(at.drive, at.engine, 'solenoidValveLeakM', {
      open: (bench) => !seated(bench),
      heard: 'unit',
    });
    fabric.bore(at.drive, at.air, 'solenoidValveLeakM', { open: seated, heard: 'unit' });

    const check = { diameterM: q.pumpCheckM, crackingPa: q.pumpCheckCrackPa };
    fabric.check(at.canister, at.pump, check, 'inletCheckLeakM');
    fabric.check(at.pump, at.air, check, 'outletCheckLeakM');
    fabric.bore(at.drive, at.pump, 'diaphragmLeakM');
    this.diaphragm = fabric.network.add(
      new Diaphragm(at.drive, at.pump, {
        areaM2: q.diaphragmM2,
        preloadN: q.diaphragmPreloadN,
        rateNPerM: q.diaphragmNPerM,
        travelM: q.diaphragmTravelM,
      }),
    );

    const delayCheck = { diameterM: q.delayCheckM, crackingPa: q.delayCheckCrackPa };
    fabric.check(at.delay, at.drive, delayCheck, 'delayCheckLeakM');
    fabric.bore(at.drive, at.delay, 'delayBleedM');

    fabric.bore(at.canister, room, 'capsuleLeakM', { seen: 'unit-capsule', heard: 'unit' });
    fabric.bore(at.canister, room, 'bodyCrackM', { seen: 'unit-body', heard: 'unit' });
  }

  /** Lift of the pump diaphragm. */
  travel(vacuum: Vacuums): number {
    return this.diaphragm.lift(vacuum('drive') - vacuum('pump')) / this.parameters.diaphragmTravelM;
  }

  /** The capsule stands on the canister side. */
  switchIsPast(vacuum: Vacuums, turn: 'to-close' | 'to-open'): boolean {
    const { tripPa, differentialPa } = this.parameters;
    const drawn = vacuum('canister');
    return turn === 'to-close' ? drawn > tripPa : drawn < tripPa - differentialPa;
  }

  /** The vent seat against its shut and open points. */
  turnValves(vacuum: Vacuums, bench: BenchState): boolean {
    const { ventShutPa, ventOpenPa } = this.parameters;
    const drawn = vacuum('delay');
    const event = drawn > ventShutPa ? 'DRAWN' : drawn < ventOpenPa ? 'REFILLED' : null;
    if (event === null) return false;
    const vent = ventTable.next(bench.vent, event);
    if (vent === bench.vent) return false;
    bench.vent = vent;
    return true;
  }

  valves(vacuum: Vacuums, bench: BenchState): ValvesInside {
    const q = this.parameters;
    const check = (from: AirVolume, to: AirVolume, crackPa: number): 'open' | 'shut' =>
      vacuum(to) - vacuum(from) >= crackPa + CHECK_LIFT_PA ? 'open' : 'shut';
    return {
      ventSeat: ventStandsShut(bench, q) ? 'shut' : 'open',
      inletCheck: check('canister', 'pump', q.pumpCheckCrackPa),
      outletCheck: check('pump', 'air', q.pumpCheckCrackPa),
      delayCheck: check('delay', 'drive', q.delayCheckCrackPa),
    };
  }

  /** True when these parameters give the diaphragm another spring. */
  heeds({ diaphragmPreloadN, diaphragmNPerM }: RigParameters): boolean {
    const { preloadN, rateNPerM } = this.diaphragm;
    return diaphragmPreloadN !== preloadN || diaphragmNPerM !== rateNPerM;
  }

  retune(parameters: RigParameters): void {
    this.parameters = parameters;
    this.diaphragm.preloadN = parameters.diaphragmPreloadN;
    this.diaphragm.rateNPerM = parameters.diaphragmNPerM;
  }
}
