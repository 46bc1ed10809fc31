import type { AirLayout } from './AirLayout.ts';
import type { AirPath, AirTrade, FlowSlope, ShiftSlope } from './AirPart.ts';
import { solveInPlace } from './AirSolve.ts';
import { AIR_GAS_CONSTANT } from './airGas.ts';

const PRESSURE_TOLERANCE_PA = 1e-5;
const MAX_ITERATIONS = 40;
const MAX_HALVINGS = 10;

/**
 * One implicit stage of the air network: finds pressures p so that every volume holds
 *
 *     p·V(p)/(R·T) = known + weight·(net mass flow at p)
 *
 * by damped Newton. Rows are volumes, nodes are volumes and boundaries. Nothing is allocated after construction.
 */
export class AirStage {
  /** Pressure of every node, Pa: the guess before `solve`, the answer after it. */
  readonly p: Float64Array;
  /** Mass each row starts from, kg. */
  readonly known: Float64Array;
  /** Volume of each row before any moving wall, m³. */
  readonly ownVolume: Float64Array;
  /** Mass flow of each path after `solve`, kg/s, consistent with `p` and the balance to rounding. */
  readonly pathFlow: Float64Array;
  /** Pressure change that Newton's last linear solve asks for, Pa. */
  readonly delta: Float64Array;
  iterations = 0;

  private readonly volume: Float64Array;
  private readonly residual: Float64Array;
  private readonly jacobian: Float64Array;
  private readonly work: Float64Array;
  private readonly before: Float64Array;
  private readonly slopeFrom: Float64Array;
  private readonly slopeTo: Float64Array;
  private readonly flowOut: FlowSlope = { q: 0, dFrom: 0, dTo: 0 };
  private readonly shiftOut: ShiftSlope = { shift: 0, slope: 0 };
  private readonly kgPerPaM3: number;
  private capPa = 0;

  private readonly temperatureK: number;
  private readonly rowOf: Int32Array;
  private readonly nodeOf: Int32Array;
  private readonly paths: readonly AirPath[];
  private readonly trades: readonly AirTrade[];

  constructor(layout: AirLayout) {
    const { temperatureK, rowOf, nodeOf, paths, trades } = layout;
    const rows = nodeOf.length;
    this.temperatureK = temperatureK;
    this.rowOf = rowOf;
    this.nodeOf = nodeOf;
    this.paths = paths;
    this.trades = trades;
    this.kgPerPaM3 = 1 / (AIR_GAS_CONSTANT * temperatureK);
    this.p = new Float64Array(rowOf.length);
    this.known = new Float64Array(rows);
    this.ownVolume = new Float64Array(rows);
    this.delta = new Float64Array(rows);
    this.volume = new Float64Array(rows);
    this.residual = new Float64Array(rows);
    this.before = new Float64Array(rows);
    this.jacobian = new Float64Array(rows * rows);
    this.work = new Float64Array(rows * rows);
    this.pathFlow = new Float64Array(paths.length);
    this.slopeFrom = new Float64Array(paths.length);
    this.slopeTo = new Float64Array(paths.length);
  }

  /** Volume of a row with its moving walls, m³, at the pressures last tried. */
  volumeOf(row: number): number {
    return this.volume[row] as number;
  }

  /** Effective volumes at the present `p`, without solving. */
  settleVolumes(): void {
    this.assemble(0);
  }

  /** Newton to convergence. False leaves `p` at the last trial. `weight` in seconds. */
  solve(weight: number): boolean {
    this.assemble(weight);
    let norm = this.norm();
    this.capPa = this.highestPressure();
    for (this.iterations = 1; this.iterations <= MAX_ITERATIONS; this.iterations++) {
      if (!this.linearSolve()) return false;
      let damping = 1;
      if (this.largestDelta() < PRESSURE_TOLERANCE_PA) {
        this.acceptLinear();
        return true;
      }
      for (let row = 0; row < this.before.length; row++) {
        this.before[row] = this.p[this.nodeOf[row] as number] as number;
      }
      for (let halving = 0; ; halving++) {
        this.tryStep(damping);
        this.assemble(weight);
        const trial = this.norm();
        if (trial <= norm * (1 - 1e-4 * damping) || halving === MAX_HALVINGS) {
          norm = trial;
          break;
        }
        damping *= 0.5;
      }
    }
    return false;
  }

  /** One linear solve from the present `p`: fills `delta`, moves nothing. For judging a step length. */
  predict(weight: number): boolean {
    this.assemble(weight);
    return this.linearSolve();
  }

  private assemble(weight: number): void {
    const { jacobian, residual, volume, p, rowOf, nodeOf } = this;
    const rows = nodeOf.length;
    const k = this.kgPerPaM3;
    jacobian.fill(0);
    volume.set(this.ownVolume);
    for (let t = 0; t < this.trades.length; t++) this.assembleTrade(this.trades[t] as AirTrade);
    for (let row = 0; row < rows; row++) {
      const pressure = p[nodeOf[row] as number] as number;
      const v = volume[row] as number;
      jacobian[row * rows + row] = (jacobian[row * rows + row] as number) + k * v;
      residual[row] = k * v * pressure - (this.known[row] as number);
    }
    const out = this.flowOut;
    for (let i = 0; i < this.paths.length; i++) {
      const path = this.paths[i] as AirPath;
      path.flow(p[path.from] as number, p[path.to] as number, this.temperatureK, out);
      this.pathFlow[i] = out.q;
      this.slopeFrom[i] = out.dFrom;
      this.slopeTo[i] = out.dTo;
      const a = rowOf[path.from] as number;
      const b = rowOf[path.to] as number;
      if (a >= 0) {
        residual[a] = (residual[a] as number) + weight * out.q;
        jacobian[a * rows + a] = (jacobian[a * rows + a] as number) + weight * out.dFrom;
        if (b >= 0) jacobian[a * rows + b] = (jacobian[a * rows + b] as number) + weight * out.dTo;
      }
      if (b >= 0) {
        residual[b] = (residual[b] as number) - weight * out.q;
        jacobian[b * rows + b] = (jacobian[b * rows + b] as number) - weight * out.dTo;
        if (a >= 0) jacobian[b * rows + a] = (jacobian[b * rows + a] as number) - weight * out.dFrom;
      }
    }
  }

  private assembleTrade(trade: AirTrade): void {
    const { jacobian, volume, p } = this;
    const rows = this.nodeOf.length;
    const out = this.shiftOut;
    const upper = this.rowOf[trade.upper] as number;
    const lower = this.rowOf[trade.lower] as number;
    trade.volumeShift((p[trade.lower] as number) - (p[trade.upper] as number), out);
    if (upper >= 0) {
      const mass = this.kgPerPaM3 * (p[trade.upper] as number) * out.slope;
      volume[upper] = (volume[upper] as number) - out.shift;
      jacobian[upper * rows + upper] = (jacobian[upper * rows + upper] as number) + mass;
      if (lower >= 0) jacobian[upper * rows + lower] = (jacobian[upper * rows + lower] as number) - mass;
    }
    if (lower >= 0) {
      const mass = this.kgPerPaM3 * (p[trade.lower] as number) * out.slope;
      volume[lower] = (volume[lower] as number) + out.shift;
      jacobian[lower * rows + lower] = (jacobian[lower * rows + lower] as number) + mass;
      if (upper >= 0) jacobian[lower * rows + upper] = (jacobian[lower * rows + upper] as number) - mass;
    }
  }

  private linearSolve(): boolean {
    this.work.set(this.jacobian);
    for (let row = 0; row < this.delta.length; row++) this.delta[row] = -(this.residual[row] as number);
    return solveInPlace(this.work, this.delta, this.delta.length);
  }

  /** The residuals as pressures, summed, Pa. */
  private norm(): number {
    let sum = 0;
    for (let row = 0; row < this.residual.length; row++) {
      sum += Math.abs(this.residual[row] as number) / (this.kgPerPaM3 * (this.volume[row] as number));
    }
    return sum;
  }

  /** No pressure of the answer can be above this: the highest at hand, or a volume with all its air shut in. */
  private highestPressure(): number {
    let highest = 0;
    for (let node = 0; node < this.p.length; node++) highest = Math.max(highest, this.p[node] as number);
    for (let row = 0; row < this.known.length; row++) {
      const smallest = Math.min(this.volume[row] as number, this.ownVolume[row] as number);
      const shutIn = (this.known[row] as number) / (this.kgPerPaM3 * smallest);
      highest = Math.max(highest, shutIn);
    }
    return highest;
  }

  private largestDelta(): number {
    let largest = 0;
    for (let row = 0; row < this.delta.length; row++) {
      largest = Math.max(largest, Math.abs(this.delta[row] as number));
    }
    return largest;
  }

  /** A part of the Newton step, kept within what pressures can be. */
  private tryStep(damping: number): void {
    for (let row = 0; row < this.delta.length; row++) {
      const from = this.before[row] as number;
      const to = from + damping * (this.delta[row] as number);
      this.p[this.nodeOf[row] as number] = Math.min(Math.max(to, 0.2 * from), this.capPa);
    }
  }

  /**
   * Takes the last linear step together with the flows of the same linear model. What a path takes from one volume
   * it gives to the next to the last bit, and the masses fit the pressures even behind a wide open port.
   */
  private acceptLinear(): void {
    for (let i = 0; i < this.paths.length; i++) {
      const path = this.paths[i] as AirPath;
      const a = this.rowOf[path.from] as number;
      const b = this.rowOf[path.to] as number;
      let q = this.pathFlow[i] as number;
      if (a >= 0) q += (this.slopeFrom[i] as number) * (this.delta[a] as number);
      if (b >= 0) q += (this.slopeTo[i] as number) * (this.delta[b] as number);
      this.pathFlow[i] = q;
    }
    for (let row = 0; row < this.delta.length; row++) {
      const node = this.nodeOf[row] as number;
      this.p[node] = (this.p[node] as number) + (this.delta[row] as number);
    }
  }
}
