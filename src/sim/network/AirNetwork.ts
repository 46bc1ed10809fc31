import { assert } from '../../base/assert.ts';
import type { AirLayout, AirLevel } from './AirLayout.ts';
import type { AirPart, AirPath, AirTrade } from './AirPart.ts';
import { AirScheme } from './AirScheme.ts';
import { AirStage } from './AirStage.ts';
import { AirState } from './AirState.ts';
import { AIR_GAS_CONSTANT } from './airGas.ts';
import { airStep } from './airStepRule.ts';

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
  readonly stage: AirStage;
  readonly scheme: AirScheme;
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
    const stage = new AirStage(layout);
    this.compiled = { layout, state, stage, scheme: new AirScheme(layout, state, stage) };
    this.fill(0, own.length);
  }

  /** Advances by h seconds and accepts the result. Swept volumes ramp evenly from where they are to where they were set. */
  step(h: number): AirStepOutcome {
    assert(h > 0 && h <= 100, 'air step', { h });
    const { scheme } = this.ready;
    this.outcome.converged = scheme.advance(h);
    this.outcome.iterations = scheme.iterations;
    return this.outcome;
  }

  /** A step in seconds that suits the present state: see `airStep`. */
  suggestStep(): number {
    const { layout, state, stage } = this.ready;
    return airStep(layout, state, stage);
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

  /** A new pressure of a boundary, absolute Pa, from the next step on. */
  setBoundary(node: number, pa: number): void {
    const { layout, state } = this.ready;
    assert(layout.rowOf[node] === -1 && pa > 0, 'boundary pressure', { node, pa });
    state.p[node] = pa;
  }

  /** The own size a volume shall have at the end of the next step, m³. */
  setVolume(node: number, m3: number): void {
    assert(m3 > 0, 'swept volume', { node, m3 });
    this.ready.state.volumeNext[this.row(node)] = m3;
  }

  /** Tells `suggestStep` how fast a swept volume is about to move, m³/s; it holds until told otherwise. */
  announceSweep(node: number, m3PerS: number): void {
    this.ready.state.sweepRate[this.row(node)] = m3PerS;
  }

  /** Refills a volume to a pressure in Pa at once, as when a part is replaced. Mass is not conserved by it. */
  refill(node: number, pa: number): void {
    assert(pa > 0, 'refill', { node, pa });
    const row = this.row(node);
    this.ready.state.p[node] = pa;
    this.fill(row, row + 1);
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

  /** Masses from the present pressures, of rows from `first` to before `end`. */
  private fill(first: number, end: number): void {
    const { layout, state, stage } = this.ready;
    stage.p.set(state.p);
    stage.ownVolume.set(state.volumeNow);
    stage.settleVolumes();
    for (let row = first; row < end; row++) {
      const pressure = state.p[layout.nodeOf[row] as number] as number;
      state.mass[row] = (pressure * stage.volumeOf(row)) / (AIR_GAS_CONSTANT * this.temperatureK);
    }
  }
}
