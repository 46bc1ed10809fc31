import { clamp } from '../../base/maths.ts';
import { celsiusToKelvin } from '../../base/units.ts';
import { CheckValve } from '../components/CheckValve.ts';
import { Diaphragm } from '../components/Diaphragm.ts';
import { Orifice } from '../components/Orifice.ts';
import { SweptVolume } from '../components/SweptVolume.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirSite, ExaminedPlace } from '../devices/places.ts';
import { AirNetwork } from '../network/AirNetwork.ts';
import { AirJoints } from './AirJoints.ts';
import { type AirVolume, OTHER_VOLUMES } from './airVolumes.ts';

/** What air surrounds the bench with. */
export interface AirSurroundings {
  readonly ambientC: number;
  readonly barometerPa: number;
  /** Share of the tank that is fuel, 0 to 1. */
  readonly fuelLevel: number;
}

/** The unit, the truck's hoses and vessels and the hand pump as one air network. `sync` follows the bench's state. */
export class BenchAir {
  readonly network: AirNetwork;
  private readonly nodes: Readonly<Record<AirVolume, number>>;
  private readonly ambient: number;
  private readonly engineSource: number;
  private readonly ventSeat: Orifice;
  private readonly ventLeak: Orifice;
  private readonly valveAtRest: Orifice;
  private readonly valveEnergised: Orifice;
  private readonly releaseValve: Orifice;
  private readonly joints: AirJoints;
  private readonly cylinder: SweptVolume;
  private readonly diaphragm: Diaphragm;

  constructor(
    private parameters: RigParameters,
    private readonly surroundings: AirSurroundings,
  ) {
    const q = parameters;
    const pa = surroundings.barometerPa;
    const net = new AirNetwork(celsiusToKelvin(surroundings.ambientC));
    this.network = net;
    this.ambient = net.boundary('room', pa);
    this.engineSource = net.boundary('engine', pa);
    const vapourM3 = Math.max(1 - surroundings.fuelLevel, 0.02) * q.tankM3;
    const v = (name: AirVolume, m3: number): number => net.volume(name, m3, pa);
    this.nodes = {
      canister: v('canister', q.canisterPassageM3),
      air: v('air', q.airPassageM3),
      engine: v('engine', q.enginePassageM3),
      drive: v('drive', q.driveChamberM3),
      pump: v('pump', q.pumpChamberM3),
      delay: v('delay', q.delayChamberM3),
      'canister-hose': v('canister-hose', q.canisterHoseM3),
      'air-hose': v('air-hose', q.airHoseM3),
      'engine-hose': v('engine-hose', q.engineHoseM3),
      'canister-vessel': v('canister-vessel', q.canisterM3),
      tank: v('tank', vapourM3),
      reservoir: v('reservoir', q.reservoirM3),
      'pump-hose': v('pump-hose', q.pumpHoseM3),
      'jar-hose': v('jar-hose', q.jarHoseM3),
      jar: v('jar', q.jarM3),
      manometer: v('manometer', q.manometerM3),
      'smoke-hose': v('smoke-hose', q.smokeHoseM3),
    };
    const at = this.nodes;
    const bore = (from: number, to: number, m: number): Orifice => net.add(Orifice.bore(from, to, m));

    // The unit.
    this.ventSeat = bore(at.canister, at.air, q.ventSeatM);
    this.ventLeak = bore(at.canister, at.air, q.ventSeatLeakM);
    this.valveAtRest = bore(at.drive, at.air, q.solenoidValveM);
    this.valveEnergised = bore(at.drive, at.engine, q.solenoidValveM);
    const check = { diameterM: q.pumpCheckM, crackingPa: q.pumpCheckCrackPa };
    net.add(new CheckValve(at.canister, at.pump, check));
    net.add(new CheckValve(at.pump, at.air, check));
    net.add(
      new CheckValve(at.delay, at.drive, { diameterM: q.delayCheckM, crackingPa: q.delayCheckCrackPa }),
    );
    bore(at.drive, at.delay, q.delayBleedM);
    bore(at.canister, this.ambient, q.capsuleLeakM);
    this.diaphragm = net.add(
      new Diaphragm(at.drive, at.pump, {
        areaM2: q.diaphragmM2,
        preloadN: q.diaphragmPreloadN,
        rateNPerM: q.diaphragmNPerM,
        travelM: q.diaphragmTravelM,
      }),
    );

    // The truck.
    bore(at['canister-hose'], at['canister-vessel'], q.portM);
    bore(at['canister-vessel'], at.tank, q.portM);
    bore(at.tank, this.ambient, q.seepM);
    net.add(
      new CheckValve(this.ambient, at.tank, { diameterM: q.portM, crackingPa: q.tankReliefPa, liftPa: 500 }),
    );
    bore(at['air-hose'], this.ambient, q.filterM);
    net.add(new CheckValve(at.reservoir, this.engineSource, { diameterM: q.enginePortM, crackingPa: 100 }));
    bore(at.reservoir, at['engine-hose'], q.enginePortM);

    // The hand pump.
    this.cylinder = new SweptVolume(net, 'cylinder', q.pumpDeadM3, q.pumpStrokeM3, pa);
    const handCheck = { diameterM: q.handPumpCheckM, crackingPa: q.handPumpCheckCrackPa };
    net.add(new CheckValve(at['pump-hose'], this.cylinder.node, handCheck));
    net.add(new CheckValve(this.cylinder.node, this.ambient, handCheck));
    this.releaseValve = bore(at['pump-hose'], this.ambient, q.releaseM);
    bore(at['pump-hose'], this.ambient, q.handPumpSealLeakM);

    bore(at['jar-hose'], at.jar, q.portM);

    this.joints = new AirJoints(net, at, this.ambient, q);
    // A step must end where a threshold is passed, not up to seconds later.
    net.level(at.canister, pa - q.tripPa);
    net.level(at.canister, pa - q.tripPa + q.differentialPa);
    net.level(at.delay, pa - q.ventShutPa);
    net.level(at.delay, pa - q.ventOpenPa);
    net.compile();
  }

  /** Opens and shuts every path as the bench's discrete state says. */
  sync(bench: BenchState): void {
    const seated = bench.plunger === 'seated';
    this.ventSeat.openness = bench.vent === 'open' ? 1 : 0;
    this.ventLeak.openness = bench.vent === 'open' ? 0 : 1;
    this.valveAtRest.openness = seated ? 0 : 1;
    this.valveEnergised.openness = seated ? 1 : 0;
    this.releaseValve.openness = bench.releaseOpen ? 1 : 0;
    const { barometerPa } = this.surroundings;
    const engineVacuum = bench.key === 'running' ? this.parameters.engineVacuumPa : 0;
    // At altitude an engine draws the same share of a thinner atmosphere.
    this.network.setBoundary(this.engineSource, barometerPa * (1 - engineVacuum / 101_325));
    this.joints.sync(bench);
  }

  /** One step during which the pump's piston travels evenly to `drawn` (0 home to 1 full). */
  step(seconds: number, drawn: number): boolean {
    this.cylinder.moveTo(clamp(drawn, 0, 1));
    return this.network.step(seconds).converged;
  }

  /** Strokes a second at which the piston is about to move, for the choice of step. */
  announce(strokesPerSecond: number): void {
    this.cylinder.announce(strokesPerSecond);
  }

  /** Vacuum in a volume, pascal below the room. */
  vacuum(volume: AirVolume): number {
    return this.surroundings.barometerPa - this.network.pressure(this.nodes[volume]);
  }

  /** Vacuum at a site: in the passage behind a port, or in the hose of an end. */
  vacuumAt(site: AirSite): number {
    return this.vacuum(this.joints.volumeOf(site));
  }

  /** True when air is heard to leak at a place. */
  hisses(_at: ExaminedPlace): boolean {
    return false;
  }

  /** Diaphragm lift as a share of its travel. */
  get diaphragmTravel(): number {
    const dp = this.network.pressure(this.nodes.pump) - this.network.pressure(this.nodes.drive);
    return this.diaphragm.lift(dp) / this.parameters.diaphragmTravelM;
  }

  /** Takes over changed parameters without touching the pressures. */
  retune(parameters: RigParameters): void {
    this.parameters = parameters;
  }

  /** Takes over the pressures of hoses, vessels and tools from the air before an item was renewed. */
  carryOver(old: BenchAir): void {
    for (const name of OTHER_VOLUMES) {
      this.network.refill(this.nodes[name], old.network.pressure(old.nodes[name]));
    }
  }
}
