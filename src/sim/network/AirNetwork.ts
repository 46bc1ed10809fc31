import { assert } from '../../base/assert.ts';
import type { AirLayout, AirLevel } from './AirLayout.ts';
import { type AirPart, type AirPath, type AirTrade, settingsChanged } from './AirPart.ts';
import { AirSolver } from './AirSolver.ts';
import { AirState } from './AirState.ts';
import { LONGEST_AIR_STEP_S, SHORTEST_AIR_STEP_S, type StepWish } from './airStepRule.ts';

const NOT_COMPILED = 'air network not compiled';

/** What a step did. The same record is returned every time: read it, do not keep it. */
export interface AirStepOutcome {
  /** False when no pressures were found; the network then stands where it stood. */
  readonly converged: boolean;
  /** Newton iterations spent. */
  readonly iterations: number;
}

interface Compiled {
  readonly layout: AirLayout;
  readonly state: AirState;
  readonly solver: AirSolver;
}

/**
 * Isothermal volumes joined by restrictions and moving walls. State is the mass in every volume; pressures follow from
 * p·V = m·R·T. What leaves one volume enters the next to the last bit. SI units throughout, pressures absolute.
 *
 * Use: `volume`, `boundary`, `add`, then `compile` once, then `step`. Nothing is allocated in a step.
 */
export class AirNetwork {
  private readonly names: string[] = [];
  private readonly ownM3: (number | undefined)[] = []; // undefined marks a boundary
  private readonly initialPa: number[] = [];
  private readonly parts: AirPart[] = [];
  private readonly levels: AirLevel[] = [];
  private compiled: Compiled | undefined;
  private readonly outcome = { converged: true, iterations: 0 };

  constructor(readonly temperatureK: number) {
    assert(temperatureK > 0, 'temperature', { temperatureK });
  }

  /** A closed volume in m³ filled to an absolute pressure in Pa. Gives its node. */
  volume(name: string, m3: number, initialPa: number): number {
    assert(m3 > 0 && initialPa > 0, 'air volume', { name, m3, initialPa });
    return this.node(name, m3, initialPa);
  }

  /** A place whose pressure is given, absolute Pa, such as the outside air. The first one counts as ambient. */
  boundary(name: string, pa: number): number {
    assert(pa > 0, 'air boundary', { name, pa });
    return this.node(name, undefined, pa);
  }

  /** Adds a part between nodes that exist. Gives the part back. */
  add<Part extends AirPart>(part: Part): Part {
    assert(!this.compiled, 'air network already compiled');
    this.parts.push(part);
    return part;
  }

  /**
   * A pressure of a volume, absolute Pa, at which something happens: `suggestStep` then ends a step close behind it, so that
   * a caller who looks after every step sees the passing in time.
   */
  level(node: number, pa: number): void {
    assert(!this.compiled && this.ownM3[node] !== undefined, 'air level', { node, pa });
    this.levels.push({ node, pa });
  }

  /** Fixes the layout and fills the volumes to their initial pressures. */
  compile(): void {
    const nodes = this.ownM3.flatMap((m3, node) => (m3 === undefined ? [] : [{ node, m3 }]));
    const rowOf = new Int32Array(this.names.length).fill(-1);
    nodes.forEach(({ node }, row) => {
      rowOf[node] = row;
    });
    const layout: AirLayout = {
      temperatureK: this.temperatureK,
      rowOf,
      nodeOf: Int32Array.from(nodes, ({ node }) => node),
      paths: this.parts.filter((part): part is AirPath => part.kind === 'path'),
      trades: this.parts.filter((part): part is AirTrade => part.kind === 'trade'),
      levels: this.levels,
      ambient: rowOf.indexOf(-1),
    };
    const settings = this.parts.map((part) => part.settings);
    const own = nodes.map(({ m3 }) => m3);
    for (const trade of layout.trades) {
      const m3 = this.ownM3[trade.upper] ?? Number.POSITIVE_INFINITY;
      assert(m3 > trade.fullShiftM3, 'diaphragm takes more than its chamber', {
        m3,
        taken: trade.fullShiftM3,
      });
    }
    const state = new AirState(this.initialPa, own, settings);
    this.compiled = { layout, state, solver: new AirSolver(layout, state, settings) };
    // Not needed again, and a bench has many parts.
    this.parts.length = 0;
    this.initialPa.length = 0;
  }

  /** Advances by h seconds and accepts the result. Swept volumes ramp evenly from where they are to where they were set. */
  step(h: number): AirStepOutcome {
    const { solver } = this.ready;
    this.outcome.converged = solver.advance(h);
    this.outcome.iterations = solver.scheme.iterations;
    return this.outcome;
  }

  /** A step in seconds that suits the present state and the announced sweeps: see `airStep`. */
  suggestStep(): number {
    const { volumeNow, volumeNext, sweepRate } = this.ready.state;
    const aims = volumeNext.slice();
    const quanta = this.planStep({
      quantumS: SHORTEST_AIR_STEP_S,
      longest: LONGEST_AIR_STEP_S / SHORTEST_AIR_STEP_S,
      moveWalls: (quanta) => {
        for (let row = 0; row < volumeNext.length; row++) {
          const now = volumeNow[row] as number;
          const rate = sweepRate[row] as number;
          volumeNext[row] =
            rate === 0
              ? (aims[row] as number)
              : Math.max(now + quanta * SHORTEST_AIR_STEP_S * rate, 0.1 * now);
        }
      },
    });
    volumeNext.set(aims);
    return quanta * SHORTEST_AIR_STEP_S;
  }

  /** The number of quanta of a step that suits the present state and the caller's moving walls: see `airStep`. */
  planStep(wish: StepWish): number {
    return this.ready.solver.planStep(wish);
  }

  /**
   * Works out a step of h seconds towards the volumes set, without taking it; `step(h)` then takes it for nothing.
   * False when no pressures were found.
   */
  foresee(h: number): boolean {
    return this.ready.solver.foresee(h);
  }

  /** Pressure of a node, Pa absolute, part of the way (0 to 1) through the step worked out last. */
  pressureWithin(node: number, share: number): number {
    const { state, solver } = this.ready;
    const now = state.p[node] as number;
    return now + share * ((solver.scheme.endPressure[node] as number) - now);
  }

  /** Absolute pressure of a node, Pa. */
  pressure(node: number): number {
    return this.ready.state.p[node] as number;
  }

  /** Mass of air in a volume, kg. */
  mass(node: number): number {
    return this.ready.state.mass[this.row(node)] as number;
  }

  /** A volume's own size in m³ now, before any diaphragm gives or takes. */
  ownVolume(node: number): number {
    return this.ready.state.volumeNow[this.row(node)] as number;
  }

  get nodeCount(): number {
    return this.names.length;
  }

  isBoundary(node: number): boolean {
    return this.ownM3[node] === undefined;
  }

  /** A new pressure of a boundary, absolute Pa, from the next step on. */
  setBoundary(node: number, pa: number): void {
    const { layout, state } = this.ready;
    assert(layout.rowOf[node] === -1 && pa > 0, 'boundary pressure', { node, pa });
    if (state.p[node] === pa) return;
    state.p[node] = pa;
    settingsChanged();
  }

  /** The own size a volume shall have at the end of the next step, m³. */
  setVolume(node: number, m3: number): void {
    assert(m3 > 0, 'swept volume', { node, m3 });
    this.ready.state.volumeNext[this.row(node)] = m3;
  }

  /** Tells `suggestStep` how fast a swept volume is about to move, m³/s; it holds until told otherwise. */
  announceSweep(node: number, m3PerS: number): void {
    const { state } = this.ready;
    const row = this.row(node);
    if (state.sweepRate[row] === m3PerS) return;
    state.sweepRate[row] = m3PerS;
    state.disturb();
  }

  /** Refills a volume to a pressure in Pa at once, as when a part is replaced. Mass is not conserved by it. */
  refill(node: number, pa: number): void {
    assert(pa > 0, 'refill', { node, pa });
    const row = this.row(node);
    const { state, solver } = this.ready;
    state.p[node] = pa;
    solver.fill(row, row + 1);
    solver.disturb();
  }

  /** Sets a swept volume to a size in m³ at once, at its present pressure. Mass is not conserved by it. */
  resize(node: number, m3: number): void {
    assert(m3 > 0, 'swept volume', { node, m3 });
    const { state } = this.ready;
    const row = this.row(node);
    state.volumeNow[row] = m3;
    state.volumeNext[row] = m3;
    this.refill(node, state.p[node] as number);
  }

  /** Mass carried by each open path in the step worked out last, kg, with their parts. For what travels with the air. */
  eachCarried(tell: (path: AirPath, kg: number) => void): void {
    const { stage, scheme } = this.ready.solver;
    const { paths } = stage.balance;
    for (let i = 0; i < paths.length; i++) {
      tell(paths[i] as AirPath, scheme.carried[i] as number);
    }
  }

  /** Flow through a path at the present pressures, kg/s, positive from its `from`. */
  flowThrough(path: AirPath): number {
    if (path.closed) return 0;
    const out = { q: 0, dFrom: 0, dTo: 0 };
    path.flow(this.pressure(path.from), this.pressure(path.to), this.temperatureK, out);
    return out.q;
  }

  /** The largest |dp/dt| of the last step, Pa/s. */
  maxRate(): number {
    return this.ready.state.maxRate;
  }

  /** Mass in all volumes, kg. */
  totalMass(): number {
    const { mass } = this.ready.state;
    let sum = 0;
    for (let row = 0; row < mass.length; row++) sum += mass[row] as number;
    return sum;
  }

  /** Mass that a boundary has given to the network since it was compiled, kg. */
  boundaryInflow(node: number): number {
    return this.ready.state.inflow[node] as number;
  }

  /** Everything that changes in time, the parts' settings with it, as plain numbers. */
  state(): number[] {
    return this.ready.state.toNumbers();
  }

  /** Puts a `state()` of the same layout back, exact to the last bit. */
  restore(state: readonly number[]): void {
    this.ready.state.restore(state);
    this.ready.solver.restored();
  }

  private get ready(): Compiled {
    if (!this.compiled) assert(false, NOT_COMPILED);
    return this.compiled;
  }

  private node(name: string, m3: number | undefined, pa: number): number {
    assert(!this.compiled, 'air network already compiled', { name });
    this.names.push(name);
    this.ownM3.push(m3);
    this.initialPa.push(pa);
    return this.names.length - 1;
  }

  private row(node: number): number {
    const row = this.ready.layout.rowOf[node] ?? -1;
    assert(row >= 0, 'not an air volume', { node, name: this.names[node] });
    return row;
  }
}
