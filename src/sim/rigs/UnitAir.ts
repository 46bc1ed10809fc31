import { Diaphragm } from '../components/Diaphragm.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirFabric } from './AirFabric.ts';
import type { AirNodes } from './airVolumes.ts';

/** Whether the vent seat stands shut: as its own diaphragm has it, unless it is stuck. */
export function ventStandsShut(bench: BenchState, q: RigParameters): boolean {
  if (q.ventStuckOpen === 1) return false;
  return q.ventStuckShut === 1 || bench.vent === 'shut';
}

/** The unit's chambers: vent seat and its delay, solenoid valve, pump diaphragm and its two checks, switch capsule. */
export class UnitAir {
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

  /** Lift of the pump diaphragm at a pressure difference (pump less drive chamber, Pa), as a share of its travel. */
  travelAt(dp: number): number {
    return this.diaphragm.lift(dp) / this.parameters.diaphragmTravelM;
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
