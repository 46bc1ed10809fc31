import { CheckValve, type CheckValveShape } from '../components/CheckValve.ts';
import { boreArea, sonicConductance } from '../components/FlowLaw.ts';
import { Orifice } from '../components/Orifice.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { ExaminedPlace, SmokePlace } from '../devices/places.ts';
import type { AirNetwork } from '../network/AirNetwork.ts';
import type { AirPath } from '../network/AirPart.ts';

/** How open a path is while the bench stands so, 0 to 1; true and false count as 1 and 0. */
export type Opening = (bench: BenchState) => number | boolean;
/** A diameter in m, or the name of the parameter that it is. */
export type Bore = keyof RigParameters | ((q: RigParameters) => number);

export interface BoreUse {
  /** Always open unless given. */
  readonly open?: Opening;
  /** Where smoke that leaves to the room by this path is seen. */
  readonly seen?: SmokePlace;
  /** Where an ear finds air that leaks through this path. */
  readonly heard?: ExaminedPlace;
}

/** A path with what can be seen or heard of the air in it. */
export interface Outlet {
  readonly path: AirPath;
  readonly seen: SmokePlace | null;
  readonly heard: ExaminedPlace | null;
}

/**
 * The paths of the bench's air as tables: which parameter each is bored by, what of the bench's state opens it, and
 * where its leaking shows. From the tables the air follows the bench (`sync`) and changed parameters (`retune`).
 */
export class AirFabric {
  readonly outlets: Outlet[] = [];
  private readonly bores: { readonly path: Orifice; readonly bore: Bore }[] = [];
  private readonly seats: { readonly check: CheckValve; readonly leak: Bore }[] = [];
  private readonly valves: { readonly path: Orifice; readonly open: Opening }[] = [];
  private readonly sources: { readonly node: number; readonly pa: (bench: BenchState) => number }[] = [];

  constructor(
    readonly network: AirNetwork,
    private parameters: RigParameters,
  ) {}

  /** A boundary whose absolute pressure in Pa goes with the bench's state; `pa` is how it begins. */
  source(name: string, pa: number, follows: (bench: BenchState) => number): number {
    const node = this.network.boundary(name, pa);
    this.sources.push({ node, pa: follows });
    return node;
  }

  /** A restriction between two nodes. */
  bore(from: number, to: number, bore: Bore, use: BoreUse = {}): Orifice {
    const path = this.network.add(Orifice.bore(from, to, diameter(bore, this.parameters)));
    this.bores.push({ path, bore });
    if (use.open !== undefined) this.valves.push({ path, open: use.open });
    if (use.seen !== undefined || use.heard !== undefined) {
      this.outlets.push({ path, seen: use.seen ?? null, heard: use.heard ?? null });
    }
    return path;
  }

  /** A check valve; `leak` is the bore of a seat that does not seal. */
  check(from: number, to: number, shape: CheckValveShape, leak?: Bore): CheckValve {
    const check = this.network.add(new CheckValve(from, to, shape));
    if (leak !== undefined) {
      this.seats.push({ check, leak });
      check.leakConductance = leakOf(leak, this.parameters);
    }
    return check;
  }

  /** True when these parameters bore a path otherwise than it is bored. */
  heeds(parameters: RigParameters): boolean {
    const now = this.parameters;
    return (
      this.bores.some(({ bore }) => diameter(bore, parameters) !== diameter(bore, now)) ||
      this.seats.some(({ leak }) => diameter(leak, parameters) !== diameter(leak, now))
    );
  }

  /** Takes over changed parameters; pressures stay. */
  retune(parameters: RigParameters): void {
    this.parameters = parameters;
    for (const { path, bore } of this.bores) path.setDiameter(diameter(bore, parameters));
    for (const { check, leak } of this.seats) check.leakConductance = leakOf(leak, parameters);
  }

  /** True when `sync` would change something. */
  differs(bench: BenchState): boolean {
    return (
      this.valves.some(({ path, open }) => path.openness !== Number(open(bench))) ||
      this.sources.some(({ node, pa }) => this.network.pressure(node) !== pa(bench))
    );
  }

  /** Opens and shuts every path, and sets every source, as the bench's state says. */
  sync(bench: BenchState): void {
    for (const { path, open } of this.valves) path.openness = Number(open(bench));
    for (const { node, pa } of this.sources) this.network.setBoundary(node, pa(bench));
  }
}

function diameter(bore: Bore, q: RigParameters): number {
  return typeof bore === 'string' ? q[bore] : bore(q);
}

function leakOf(leak: Bore, q: RigParameters): number {
  return sonicConductance(boreArea(diameter(leak, q)));
}
