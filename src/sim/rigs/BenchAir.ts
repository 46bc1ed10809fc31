import { clamp } from '../../base/maths.ts';
import { celsiusToKelvin } from '../../base/units.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirSite, ExaminedPlace, SmokePlace } from '../devices/places.ts';
import { AirNetwork } from '../network/AirNetwork.ts';
import { AirFabric } from './AirFabric.ts';
import { addJoints, SITE_VOLUMES } from './AirJoints.ts';
import { AIR_VOLUMES, type AirNodes, type AirVolume } from './airVolumes.ts';
import { ToolAir } from './ToolAir.ts';
import { addTruckAir, manifoldPa, vapourSpace } from './truckAir.ts';
import { UnitAir } from './UnitAir.ts';

/** What air surrounds the bench with. */
export interface AirSurroundings {
  readonly ambientC: number;
  readonly barometerPa: number;
  /** Share of the tank that is fuel, 0 to 1. */
  readonly fuelLevel: number;
}

/** Grid of the air's steps, its longest step in ticks, and where the piston is so many ticks on (0 home to 1 drawn). */
export interface AirStepWish {
  readonly secondsPerTick: number;
  readonly longestTicks: number;
  drawnAfter(ticks: number): number;
}

/** Air lost through one place that an ear can find, kg/s: about 0.4 L/min. Common practice, no source. */
const AUDIBLE_KG_PER_S = 8e-6;
/** Full scale of the smoke machine's flow ball, kg/s: about 5 L/min. */
const FLOW_BALL_KG_PER_S = 1e-4;

/** The unit, the truck's hoses and vessels and the tools as one air network. `sync` follows the bench's state. */
export class BenchAir {
  readonly network: AirNetwork;
  readonly nodes: AirNodes;
  /** The regulator of the smoke machine. */
  readonly smokeSource: number;
  private readonly fabric: AirFabric;
  private readonly unit: UnitAir;
  private readonly tools: ToolAir;
  /** The step that was made sure of last; it holds until a path, a source or the air itself has changed. */
  private readonly sure = { seconds: 0, drawn: 0 };

  constructor(
    private parameters: RigParameters,
    private readonly surroundings: AirSurroundings,
  ) {
    const q = parameters;
    const pa = surroundings.barometerPa;
    const net = new AirNetwork(celsiusToKelvin(surroundings.ambientC));
    const fabric = new AirFabric(net, q);
    this.network = net;
    this.fabric = fabric;
    const room = net.boundary('room', pa);
    const engine = fabric.source('engine', pa, (bench) => manifoldPa(bench, pa, this.parameters));
    this.smokeSource = fabric.source('smoke', pa, (bench) => pa + bench.smoke.pa);
    const sizes = volumeSizes(q, surroundings.fuelLevel);
    const nodes = AIR_VOLUMES.map((name) => [name, net.volume(name, sizes[name], pa)]);
    const at = Object.fromEntries(nodes) as Record<AirVolume, number>;
    this.nodes = at;
    this.unit = new UnitAir(fabric, at, room, q);
    addTruckAir(fabric, at, room, engine, () => this.parameters);
    this.tools = new ToolAir(fabric, at, room, this.smokeSource, { q, barometerPa: pa });
    addJoints(fabric, at, room);
    // A step must end where a threshold is passed, not up to seconds later.
    net.level(at.canister, pa - q.tripPa);
    net.level(at.canister, pa - q.tripPa + q.differentialPa);
    net.level(at.delay, pa - q.ventShutPa);
    net.level(at.delay, pa - q.ventOpenPa);
    net.compile();
  }

  /** True when the bench's state asks for paths or sources other than they stand. */
  differs(bench: BenchState): boolean {
    return this.fabric.differs(bench);
  }

  /** Opens and shuts every path as the bench's discrete state says. */
  sync(bench: BenchState): void {
    this.fabric.sync(bench);
    this.sure.seconds = 0;
  }

  /** One step during which the pump's piston travels evenly to `drawn` (0 home to 1 full). */
  step(seconds: number, drawn: number): boolean {
    this.sure.seconds = 0;
    this.tools.cylinder.moveTo(clamp(drawn, 0, 1));
    return this.network.step(seconds).converged;
  }

  /** Ticks of the next step, which is worked out ahead. */
  plan({ secondsPerTick, longestTicks, drawnAfter }: AirStepWish): number {
    this.sure.seconds = 0;
    return this.network.planStep({
      quantumS: secondsPerTick,
      longest: longestTicks,
      moveWalls: (quanta) => this.tools.cylinder.moveTo(clamp(drawnAfter(quanta), 0, 1)),
    });
  }

  /** Makes sure that a step is worked out ahead, for looking into it. */
  foresee(seconds: number, drawn: number): void {
    const { sure } = this;
    if (sure.seconds === seconds && sure.drawn === drawn) return;
    this.tools.cylinder.moveTo(clamp(drawn, 0, 1));
    this.network.foresee(seconds);
    sure.seconds = seconds;
    sure.drawn = drawn;
  }

  /** Strokes a second at which the piston is about to move. */
  announce(strokesPerSecond: number): void {
    this.tools.cylinder.announce(strokesPerSecond);
  }

  /** Vacuum in a volume, pascal below the room; `share` is how far through the step worked out ahead. */
  vacuum(volume: AirVolume, share = 0): number {
    return this.surroundings.barometerPa - this.pressure(this.nodes[volume], share);
  }

  /** Vacuum at a site: in the passage behind a port, or in the hose of an end. */
  vacuumAt(site: AirSite): number {
    return this.vacuum(SITE_VOLUMES[site]);
  }

  /** True when air is heard to leak at a place. */
  hisses(at: ExaminedPlace): boolean {
    return this.fabric.bored.some(
      ({ use, path }) => use.heard === at && Math.abs(this.network.flowThrough(path)) > AUDIBLE_KG_PER_S,
    );
  }

  /** Places where air leaves to the room faster than `kgPerS`, with the volume it comes from. */
  outflows(kgPerS: number): { readonly seen: SmokePlace; readonly from: number }[] {
    const found = [];
    for (const { use, path } of this.fabric.bored) {
      const { seen } = use;
      if (seen !== undefined && this.network.flowThrough(path) > kgPerS)
        found.push({ seen, from: path.from });
    }
    return found;
  }

  /** Flow of the smoke machine as a share of its scale, 0 to 1. */
  get smokeFlow(): number {
    return clamp(this.network.flowThrough(this.tools.smokeSupply) / FLOW_BALL_KG_PER_S, 0, 1);
  }

  /** Diaphragm lift as a share of its travel. */
  diaphragmTravel(share = 0): number {
    return this.unit.travelAt(this.pressure(this.nodes.pump, share) - this.pressure(this.nodes.drive, share));
  }

  /** True when these parameters bore a path otherwise than it is bored. */
  heeds(parameters: RigParameters): boolean {
    return this.fabric.heeds(parameters) || this.unit.heeds(parameters);
  }

  /** Puts the hand pump's piston there at once, 0 home to 1 drawn, at the pressure it has. */
  placePiston(drawn: number): void {
    this.sure.seconds = 0;
    this.tools.cylinder.place(clamp(drawn, 0, 1));
  }

  /** Takes over changed parameters without touching the pressures. */
  retune(parameters: RigParameters): void {
    this.parameters = parameters;
    this.sure.seconds = 0;
    this.unit.retune(parameters);
    this.fabric.retune(parameters);
  }

  /** Takes over the pressures of the air before something was renewed, but for the volumes that came new. */
  carryOver(old: BenchAir, renewed: readonly AirVolume[]): void {
    for (const name of AIR_VOLUMES) {
      if (!renewed.includes(name))
        this.network.refill(this.nodes[name], old.network.pressure(old.nodes[name]));
    }
    const { cylinder } = this.tools;
    cylinder.place(clamp(old.tools.cylinder.drawn, 0, 1));
    this.network.refill(cylinder.node, old.network.pressure(old.tools.cylinder.node));
  }

  private pressure(node: number, share: number): number {
    return share === 0 ? this.network.pressure(node) : this.network.pressureWithin(node, share);
  }
}

/** Sizes of the volumes in m³. */
function volumeSizes(q: RigParameters, fuelLevel: number): Readonly<Record<AirVolume, number>> {
  return {
    canister: q.canisterPassageM3,
    air: q.airPassageM3,
    engine: q.enginePassageM3,
    drive: q.driveChamberM3,
    pump: q.pumpChamberM3,
    delay: q.delayChamberM3,
    'canister-hose': q.canisterHoseM3,
    'air-hose': q.airHoseM3,
    'engine-hose': q.engineHoseM3,
    'canister-vessel': q.canisterM3,
    tank: vapourSpace(fuelLevel, q),
    reservoir: q.reservoirM3,
    'pump-hose': q.pumpHoseM3,
    'jar-hose': q.jarHoseM3,
    jar: q.jarM3,
    manometer: q.manometerM3,
    'smoke-hose': q.smokeHoseM3,
  };
}
