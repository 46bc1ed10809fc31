import { clamp } from '../../base/maths.ts';
import { celsiusToKelvin } from '../../base/units.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { AirSite, ExaminedPlace, SmokePlace } from '../devices/places.ts';
import { AirNetwork } from '../network/AirNetwork.ts';
import { AirFabric } from './AirFabric.ts';
import { addJoints, SITE_VOLUMES } from './AirJoints.ts';
import { type AirNodes, type AirVolume, TOOL_VOLUMES } from './airVolumes.ts';
import { manifoldPa } from './manifoldPa.ts';
import type { UnitAir, ValvesInside } from './RigAir.ts';
import type { RigDefinition } from './RigDefinition.ts';
import { ToolAir } from './ToolAir.ts';

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
  private readonly volumes: readonly AirVolume[];
  private readonly tools: ToolAir;
  /** The step that was made sure of last; it holds until a path, a source or the air itself has changed. */
  private readonly sure = { seconds: 0, drawn: 0 };

  constructor(
    rig: Pick<RigDefinition, 'air' | 'surface'>,
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
    const own = [...rig.air.unitVolumes, ...rig.air.truckVolumes];
    this.volumes = [...own, ...TOOL_VOLUMES];
    const nodes = [
      ...own.map((name) => [name, net.volume(name, rig.air.sizeOf(name, q, surroundings.fuelLevel), pa)]),
      ...TOOL_VOLUMES.map((name) => [name, net.volume(name, toolVolume(name, q), pa)]),
    ];
    const at = Object.fromEntries(nodes) as Record<AirVolume, number>;
    this.nodes = at;
    const ends = { room, engine };
    this.unit = rig.air.buildUnit(fabric, at, ends, () => this.parameters);
    rig.air.buildTruck(fabric, at, ends, () => this.parameters);
    this.tools = new ToolAir(fabric, at, room, this.smokeSource, { q, barometerPa: pa });
    addJoints(fabric, rig.surface, at, room);
    // A step must end where a threshold is passed, not up to seconds later.
    for (const level of rig.air.levels(q, pa)) net.level(at[level.volume], level.pa);
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

  /** How far what the unit's diaphragm moves has come, as a share of its full way. */
  unitTravel(share = 0): number {
    return this.unit.travel((volume) => this.vacuum(volume, share));
  }

  /** True when what works the unit's switch stands past the point at which it turns from how it is. */
  switchIsPast(turn: 'to-close' | 'to-open'): boolean {
    return this.unit.switchIsPast((volume) => this.vacuum(volume), turn);
  }

  /** How the unit's valves stand, for who may see inside. */
  valves(bench: BenchState, share: number): ValvesInside {
    return this.unit.valves((volume) => this.vacuum(volume, share), bench);
  }

  has(volume: AirVolume): boolean {
    return this.volumes.includes(volume);
  }

  /** Lets the unit's own valves follow the air; true when one has turned. */
  turnValves(bench: BenchState): boolean {
    return this.unit.turnValves((volume) => this.vacuum(volume), bench);
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
    for (const name of this.volumes) {
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

/** Size of a tool's own volume, m³. */
function toolVolume(name: (typeof TOOL_VOLUMES)[number], q: RigParameters): number {
  switch (name) {
    case 'pump-hose':
      return q.pumpHoseM3;
    case 'jar-hose':
      return q.jarHoseM3;
    case 'jar':
      return q.jarM3;
    case 'manometer':
      return q.manometerM3;
    case 'smoke-hose':
      return q.smokeHoseM3;
  }
}
