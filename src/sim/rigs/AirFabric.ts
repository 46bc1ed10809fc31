import { CheckValve, type CheckValveShape } from '../components/CheckValve.ts';
import { boreArea, sonicConductance } from '../components/FlowLaw.ts';
import { Orifice } from '../components/Orifice.ts';
import type { BenchState } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import type { ExaminedPlace, SmokePlace } from '../devices/places.ts';
import type { AirNetwork } from '../network/AirNetwork.ts';

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

/** A restriction with its bore, what opens it and where its leaking shows. */
export interface BoredPath {
  readonly path: Orifice;
  readonly bore: Bore;
  readonly use: BoreUse;
}

const ALWAYS_OPEN: BoreUse = {};

/**
 * The paths of the bench's air as tables: which parameter each is bored by, what of the bench's state opens it, and
 * where its leaking shows. From the tables the air follows the bench (`sync`) and changed parameters (`retune`).
 */
export class AirFabric {
  readonly bored: BoredPath[] = [];
  private readonly seats: { readonly check: CheckValve; readonly leak: Bore }[] = [];
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
  bore(from: number, to: number, bore: Bore, use: BoreUse = ALWAYS_OPEN): Orifice {
    const path = this.network.add(Orifice.bore(from, to, diameter(bore, this.parameters)));
    this.bored.push({ path, bore, use });
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
      this.bored.some(({ bore }) => diameter(bore, parameters) !== diameter(bore, now)) ||
      this.seats.some(({ leak }) => diameter(leak, parameters) !== diameter(leak, now))
    );
  }

  /** Takes over changed parameters; pressures stay. */
  retune(parameters: RigParameters): void {
    this.parameters = parameters;
    for (const { path, bore } of this.bored) path.setDiameter(diameter(bore, parameters));
    for (const { check, leak } of this.seats) check.leakConductance = leakOf(leak, parameters);
  }

  /** True when `sync` would change something. */
  differs(bench: BenchState): boolean {
    return (
      this.bored.some(
        ({ path, use }) => use.open !== undefined && path.openness !== Number(use.open(bench)),
      ) || this.sources.some(({ node, pa }) => this.network.pressure(node) !== pa(bench))
    );
  }

  /** Opens and shuts every path, and sets every source, as the bench's state says. */
  sync(bench: BenchState): void {
    for (const { path, use } of this.bored) {
      if (use.open !== undefined) path.openness = Number(use.open(bench));
    }
    for (const { node, pa } of this.sources) this.network.setBoundary(node, pa(bench));
  }
}

function diameter(bore: Bore, q: RigParameters): number {
  return typeof bore === 'string' ? q[bore] : bore(q);
}

function leakOf(leak: Bore, q: RigParameters): number {
  return sonicConductance(boreArea(diameter(leak, q)));
}
