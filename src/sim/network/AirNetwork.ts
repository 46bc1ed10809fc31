import { assert } from '../../base/assert.ts';
import type { AirPart, AirPath, AirTrade } from './AirPart.ts';
import { AirStage } from './AirStage.ts';
import { AIR_GAS_CONSTANT } from './airGas.ts';

export const SHORTEST_AIR_STEP_S = 50e-6;
export const LONGEST_AIR_STEP_S = 5;

const GAMMA = 1 - Math.sqrt(0.5);
const FIRST_STEP_S = 1e-3;
const MOVE_PER_STEP_PA = 150;
const MOVE_PER_STEP_OF_AMBIENT = 0.01;
/** Beyond this difference between its stages the second-order step is replaced by backward Euler. */
const STAGE_GAP_PA = 3000;

/** What a step did. The same record is returned every time: read it, do not keep it. */
export interface AirStepOutcome {
  /** False when neither scheme found pressures; the network then stands where it stood. */
  readonly converged: boolean;
  /** Newton iterations spent. */
  readonly iterations: number;
}

/**
 * Isothermal volumes joined by restrictions and moving walls.
 *
 * State is the mass in every volume; pressures follow from p·V = m·R·T. A step is the two-stage, second-order, L-stable
 * singly diagonally implicit Runge–Kutta scheme with γ = 1 − 1/√2. Where its stages differ by so much that it might
 * overshoot a check valve, one backward Euler step stands in. What leaves one volume enters the next to the last bit.
 *
 * Use: `volume`, `boundary`, `add`, then `compile` once, then `step`. SI units throughout, pressures absolute.
 */
export class AirNetwork {
  private readonly names: string[] = [];
  private readonly initialM3: number[] = []; // −1 marks a boundary
  private readonly initialPa: number[] = [];
  private readonly parts: AirPart[] = [];

  private stage!: AirStage;
  private rowOf!: Int32Array;
  private nodeOf!: Int32Array;
  private paths!: readonly AirPath[];
  private massOf!: Float64Array; // by row, kg
  private p!: Float64Array; // by node, Pa
  private volumeNow!: Float64Array; // by row, m³, without moving walls
  private volumeNext!: Float64Array; // by row, m³, at the end of the next step
  private sweepRate!: Float64Array; // by row, m³/s, announced for suggestStep
  private inflow!: Float64Array; // by node, kg given by a boundary
  private firstFlow!: Float64Array; // by path, kg/s, of the first stage
  private net!: Float64Array; // by row, kg/s, scratch
  private clock!: Float64Array; // [last step in s, fastest |dp/dt| in it in Pa/s]
  private saved!: readonly Float64Array[];
  private ambient = -1;
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
    const node = this.node(name, -1, pa);
    if (this.ambient < 0) this.ambient = node;
    return node;
  }

  /** Adds a part between nodes that exist. Gives the part back. */
  add<Part extends AirPart>(part: Part): Part {
    this.parts.push(part);
    return part;
  }

  /** Fixes the layout. Nothing is allocated after it. */
  compile(): void {
    const nodes = this.names.length;
    const volumes = this.initialM3.flatMap((m3, node) => (m3 > 0 ? [node] : []));
    this.nodeOf = Int32Array.from(volumes);
    this.rowOf = new Int32Array(nodes).fill(-1);
    volumes.forEach((node, row) => {
      this.rowOf[node] = row;
    });
    this.paths = this.parts.filter((part): part is AirPath => part.kind === 'path');
    const trades = this.parts.filter((part): part is AirTrade => part.kind === 'trade');
    this.p = Float64Array.from(this.initialPa);
    this.volumeNow = Float64Array.from(volumes, (node) => this.initialM3[node] as number);
    this.volumeNext = this.volumeNow.slice();
    this.sweepRate = new Float64Array(volumes.length);
    this.massOf = new Float64Array(volumes.length);
    this.net = new Float64Array(volumes.length);
    this.inflow = new Float64Array(nodes);
    this.firstFlow = new Float64Array(this.paths.length);
    this.clock = Float64Array.of(FIRST_STEP_S, 0);
    this.stage = new AirStage(this.temperatureK, this.rowOf, this.nodeOf, this.paths, trades);
    this.saved = [
      this.massOf,
      this.p,
      this.volumeNow,
      this.volumeNext,
      this.sweepRate,
      this.inflow,
      this.clock,
      ...this.parts.map((part) => part.settings),
    ];
    this.checkTrades(trades);
    this.fillFromPressures();
  }

  /** Advances by h seconds and accepts the result. Swept volumes ramp evenly from where they are to where they were set. */
  step(h: number): AirStepOutcome {
    assert(h > 0 && h <= 100, 'air step', { h });
    this.outcome.iterations = 0;
    const done = this.secondOrderStep(h) || this.backwardEulerStep(h);
    this.outcome.converged = done;
    if (done) this.finish(h);
    return this.outcome;
  }

  /** Absolute pressure of a node, Pa. */
  pressure(node: number): number {
    return this.p[node] as number;
  }

  /** Mass of air in a volume, kg. */
  mass(node: number): number {
    return this.massOf[this.row(node)] as number;
  }

  /** A volume's own size in m³ (before any diaphragm takes from it), as of now. */
  ownVolume(node: number): number {
    return this.volumeNow[this.row(node)] as number;
  }

  setBoundary(node: number, pa: number): void {
    assert(this.rowOf[node] === -1 && pa > 0, 'boundary pressure', { node, pa });
    this.p[node] = pa;
  }

  /** The size a volume shall have at the end of the next step, m³. */
  setVolume(node: number, m3: number): void {
    assert(m3 > 0, 'swept volume', { node, m3 });
    this.volumeNext[this.row(node)] = m3;
  }

  /** Tells `suggestStep` how fast a swept volume is about to move, m³/s; it holds until told otherwise. */
  announceSweep(node: number, m3PerS: number): void {
    this.sweepRate[this.row(node)] = m3PerS;
  }

  /** Refills a volume to a pressure in Pa at once, as when a part is replaced. Mass is not conserved by it. */
  refill(node: number, pa: number): void {
    assert(pa > 0, 'refill', { node, pa });
    this.row(node);
    this.p[node] = pa;
    this.fillFromPressures(node);
  }

  /** The largest |dp/dt| of the last step, Pa/s. */
  maxRate(): number {
    return this.clock[1] as number;
  }

  /**
   * A step in seconds in which no pressure is expected to move more than 150 Pa, or 1 % of its distance to ambient where
   * that is more; at most twice the last step, and within the shortest and longest. Depends on the state alone.
   */
  suggestStep(): number {
    let h = Math.min(2 * (this.clock[0] as number), LONGEST_AIR_STEP_S);
    for (let attempt = 0; attempt < 20 && h > SHORTEST_AIR_STEP_S; attempt++) {
      const excess = this.expectedMove(h);
      if (excess <= 1) return h;
      h *= Math.max(0.1, Math.min(0.9, 0.9 / excess));
    }
    return Math.max(h, SHORTEST_AIR_STEP_S);
  }

  /** Mass in all volumes, kg. */
  totalMass(): number {
    let sum = 0;
    for (let row = 0; row < this.massOf.length; row++) sum += this.massOf[row] as number;
    return sum;
  }

  /** Mass that a boundary has given to the network since it was compiled, kg. */
  boundaryInflow(node: number): number {
    return this.inflow[node] as number;
  }

  /** Everything that changes in time, the parts' settings with it, as plain numbers. */
  state(): number[] {
    return this.saved.flatMap((numbers) => [...numbers]);
  }

  /** Puts a `state()` of the same layout back, exact to the last bit. */
  restore(state: readonly number[]): void {
    let at = 0;
    for (const numbers of this.saved) {
      for (let i = 0; i < numbers.length; i++) numbers[i] = state[at++] as number;
    }
    assert(at === state.length, 'air state of another layout', { expected: at, given: state.length });
  }

  private node(name: string, m3: number, pa: number): number {
    this.names.push(name);
    this.initialM3.push(m3);
    this.initialPa.push(pa);
    return this.names.length - 1;
  }

  private row(node: number): number {
    const row = this.rowOf[node] ?? -1;
    assert(row >= 0, 'not an air volume', { node, name: this.names[node] });
    return row;
  }

  private checkTrades(trades: readonly AirTrade[]): void {
    for (const trade of trades) {
      const row = this.rowOf[trade.upper] as number;
      if (row < 0) continue;
      const m3 = this.volumeNow[row] as number;
      assert(m3 > trade.fullShiftM3, 'diaphragm takes more than its chamber', {
        m3,
        taken: trade.fullShiftM3,
      });
    }
  }

  /** Masses from the present pressures, of one node or of all. */
  private fillFromPressures(only = -1): void {
    const { stage } = this;
    stage.p.set(this.p);
    stage.ownVolume.set(this.volumeNow);
    stage.settleVolumes();
    for (let row = 0; row < this.massOf.length; row++) {
      const node = this.nodeOf[row] as number;
      if (only >= 0 && node !== only) continue;
      this.massOf[row] =
        ((this.p[node] as number) * stage.volumeOf(row)) / (AIR_GAS_CONSTANT * this.temperatureK);
    }
  }

  private secondOrderStep(h: number): boolean {
    const { stage, massOf, volumeNow, volumeNext, net } = this;
    const rows = massOf.length;
    stage.p.set(this.p);
    stage.known.set(massOf);
    for (let row = 0; row < rows; row++) {
      const v = volumeNow[row] as number;
      stage.ownVolume[row] = v + GAMMA * ((volumeNext[row] as number) - v);
    }
    if (!this.solveStage(GAMMA * h)) return false;
    this.firstFlow.set(stage.pathFlow);
    this.netFlow(stage.pathFlow);
    for (let row = 0; row < rows; row++) {
      const known = (massOf[row] as number) + (1 - GAMMA) * h * (net[row] as number);
      if (!(known > 0)) return false;
      stage.known[row] = known;
    }
    stage.ownVolume.set(volumeNext);
    if (!this.solveStage(GAMMA * h)) return false;
    if (this.stageGap(h) > STAGE_GAP_PA) return false;
    for (let i = 0; i < this.paths.length; i++) {
      this.carry(
        i,
        h * ((1 - GAMMA) * (this.firstFlow[i] as number) + GAMMA * (stage.pathFlow[i] as number)),
      );
    }
    return true;
  }

  private backwardEulerStep(h: number): boolean {
    const { stage } = this;
    stage.p.set(this.p);
    stage.known.set(this.massOf);
    stage.ownVolume.set(this.volumeNext);
    if (!this.solveStage(h)) return false;
    for (let i = 0; i < this.paths.length; i++) this.carry(i, h * (stage.pathFlow[i] as number));
    return true;
  }

  private solveStage(weight: number): boolean {
    const solved = this.stage.solve(weight);
    this.outcome.iterations += this.stage.iterations;
    return solved;
  }

  /** Fills `net` with the mass flow into each row, kg/s. */
  private netFlow(pathFlow: Float64Array): void {
    const { net, rowOf, paths } = this;
    net.fill(0);
    for (let i = 0; i < paths.length; i++) {
      const path = paths[i] as AirPath;
      const a = rowOf[path.from] as number;
      const b = rowOf[path.to] as number;
      if (a >= 0) net[a] = (net[a] as number) - (pathFlow[i] as number);
      if (b >= 0) net[b] = (net[b] as number) + (pathFlow[i] as number);
    }
  }

  /** How far, in Pa, the second stage's flows would have moved a volume from where the first stage's would. */
  private stageGap(h: number): number {
    const { stage } = this;
    for (let i = 0; i < this.paths.length; i++) {
      this.firstFlow[i] = (stage.pathFlow[i] as number) - (this.firstFlow[i] as number);
    }
    this.netFlow(this.firstFlow);
    for (let i = 0; i < this.paths.length; i++) {
      this.firstFlow[i] = (stage.pathFlow[i] as number) - (this.firstFlow[i] as number);
    }
    let gap = 0;
    for (let row = 0; row < this.net.length; row++) {
      gap = Math.max(gap, Math.abs(this.net[row] as number) / stage.volumeOf(row));
    }
    return gap * GAMMA * h * AIR_GAS_CONSTANT * this.temperatureK;
  }

  /** Moves mass in kg along a path. */
  private carry(index: number, kg: number): void {
    const { from, to } = this.paths[index] as AirPath;
    this.receive(from, -kg);
    this.receive(to, kg);
  }

  private receive(node: number, kg: number): void {
    const row = this.rowOf[node] as number;
    if (row >= 0) this.massOf[row] = (this.massOf[row] as number) + kg;
    else this.inflow[node] = (this.inflow[node] as number) - kg;
  }

  private finish(h: number): void {
    let largest = 0;
    for (let node = 0; node < this.p.length; node++) {
      const next = this.stage.p[node] as number;
      largest = Math.max(largest, Math.abs(next - (this.p[node] as number)));
      this.p[node] = next;
    }
    this.volumeNow.set(this.volumeNext);
    this.clock[0] = h;
    this.clock[1] = largest / h;
  }

  /** The largest expected move of a pressure in a step of h, as a multiple of what is allowed. */
  private expectedMove(h: number): number {
    const { stage } = this;
    stage.p.set(this.p);
    stage.known.set(this.massOf);
    for (let row = 0; row < this.massOf.length; row++) {
      const ahead = (this.volumeNow[row] as number) + h * (this.sweepRate[row] as number);
      stage.ownVolume[row] = Math.max(ahead, 0.1 * (this.volumeNow[row] as number));
    }
    if (!stage.predict(h)) return Number.POSITIVE_INFINITY;
    const ambientPa = this.ambient < 0 ? 0 : (this.p[this.ambient] as number);
    let excess = 0;
    for (let row = 0; row < this.massOf.length; row++) {
      const pressure = this.p[this.nodeOf[row] as number] as number;
      const distance = this.ambient < 0 ? 0 : Math.abs(pressure - ambientPa);
      const allowed = Math.max(MOVE_PER_STEP_PA, MOVE_PER_STEP_OF_AMBIENT * distance);
      excess = Math.max(excess, Math.abs(stage.delta[row] as number) / allowed);
    }
    return excess;
  }
}
