import { numberRows } from '../../base/numberRows.ts';
import type { AirLayout } from './AirLayout.ts';
import type { AirPath, AirTrade, FlowSlope, ShiftSlope } from './AirPart.ts';
import type { AirPlan } from './AirPlan.ts';
import { AIR_GAS_CONSTANT } from './airGas.ts';
import { copyNumbers } from './copyNumbers.ts';

/** What is written anew in every solve and not looked at after it: shared by all stages of one size. */
interface Scratch {
  readonly residual: Float64Array;
  readonly jacobian: Float64Array;
  readonly slopeFrom: Float64Array;
  readonly slopeTo: Float64Array;
}

const scratches = new Map<string, Scratch>();

function scratchOf(rows: number, paths: number): Scratch {
  const size = `${rows}/${paths}`;
  const found = scratches.get(size);
  if (found !== undefined) return found;
  const scratch: Scratch = {
    residual: new Float64Array(rows),
    jacobian: new Float64Array(rows * rows),
    slopeFrom: new Float64Array(paths),
    slopeTo: new Float64Array(paths),
  };
  scratches.set(size, scratch);
  return scratch;
}

/**
 * The balance of mass of every volume at trial pressures: what it holds less what it should, and how that changes with
 * every pressure. Worked out island by island of the present plan. Rows are volumes, nodes are volumes and boundaries.
 * Nothing is allocated after construction.
 */
export class AirBalance {
  /** Pressure of every node, Pa, as tried. */
  readonly p: Float64Array;
  /** Mass each row starts from, kg. */
  readonly known: Float64Array;
  /** Volume of each row before any moving wall, m³. */
  readonly ownVolume: Float64Array;
  /** Mass flow of each open path, kg/s, and its slopes by the pressures of its ends, kg/(s·Pa). */
  readonly pathFlow: Float64Array;
  readonly slopeFrom: Float64Array;
  readonly slopeTo: Float64Array;
  /** By row, kg: what it holds less what it should. */
  readonly residual: Float64Array;
  /** Square, row by row, kg/Pa. */
  readonly jacobian: Float64Array;
  /** kg per Pa and m³. */
  readonly density: number;
  plan: AirPlan;
  /** Open paths and trades in the plan's order. */
  readonly paths: AirPath[] = [];
  private readonly trades: AirTrade[] = [];
  private readonly volume: Float64Array;
  private readonly flowOut: FlowSlope = { q: 0, dFrom: 0, dTo: 0 };
  private readonly shiftOut: ShiftSlope = { shift: 0, slope: 0 };
  private readonly temperatureK: number;
  private readonly rowOf: Int32Array;
  private readonly nodeOf: Int32Array;

  constructor(
    private readonly layout: AirLayout,
    plan: AirPlan,
  ) {
    const { temperatureK, rowOf, nodeOf, paths } = layout;
    const rows = nodeOf.length;
    this.temperatureK = temperatureK;
    this.rowOf = rowOf;
    this.nodeOf = nodeOf;
    this.density = 1 / (AIR_GAS_CONSTANT * temperatureK);
    const numbers = numberRows({
      p: rowOf.length,
      known: rows,
      ownVolume: rows,
      volume: rows,
      pathFlow: paths.length,
    });
    this.p = numbers.p;
    this.known = numbers.known;
    this.ownVolume = numbers.ownVolume;
    this.volume = numbers.volume;
    this.pathFlow = numbers.pathFlow;
    const scratch = scratchOf(rows, paths.length);
    this.residual = scratch.residual;
    this.jacobian = scratch.jacobian;
    this.slopeFrom = scratch.slopeFrom;
    this.slopeTo = scratch.slopeTo;
    this.plan = plan;
    this.use(plan);
  }

  /** Goes on by another plan of the same layout. */
  use(plan: AirPlan): void {
    const { layout, paths, trades } = this;
    this.plan = plan;
    paths.length = plan.pathAt.length;
    for (let i = 0; i < paths.length; i++) paths[i] = layout.paths[plan.pathAt[i] as number] as AirPath;
    trades.length = plan.tradeAt.length;
    for (let i = 0; i < trades.length; i++) trades[i] = layout.trades[plan.tradeAt[i] as number] as AirTrade;
  }

  /** Volume of a row with its moving walls, m³, at the pressures last tried. */
  volumeOf(row: number): number {
    return this.volume[row] as number;
  }

  /** Volumes and flows at the present `p` in every island, without solving. */
  settle(): void {
    const { paths, pathFlow, trades, volume, p, temperatureK } = this;
    const { fromNode, toNode } = this.plan;
    copyNumbers(volume, this.ownVolume);
    for (let t = 0; t < trades.length; t++) this.shiftWall(trades[t] as AirTrade);
    const out = this.flowOut;
    for (let i = 0; i < paths.length; i++) {
      const from = p[fromNode[i] as number] as number;
      (paths[i] as AirPath).flow(from, p[toNode[i] as number] as number, temperatureK, out);
      pathFlow[i] = out.q;
    }
  }

  /** Residuals and their slopes by the pressures of one island, at the present `p`; `weight` in seconds. */
  assemble(island: number, weight: number): void {
    const { jacobian, residual, volume, p, nodeOf, plan } = this;
    const rows = nodeOf.length;
    const k = this.density;
    const { rows: planRows, elimination } = plan;
    const pattern = elimination[island]?.pattern as Int32Array;
    for (let i = 0; i < pattern.length; i++) jacobian[pattern[i] as number] = 0;
    const first = plan.rowStart[island] as number;
    const end = plan.rowStart[island + 1] as number;
    const { ownVolume, known } = this;
    for (let i = first; i < end; i++) {
      const row = planRows[i] as number;
      volume[row] = ownVolume[row] as number;
    }
    for (let t = plan.tradeStart[island] as number; t < (plan.tradeStart[island + 1] as number); t++) {
      this.assembleTrade(this.trades[t] as AirTrade);
    }
    for (let i = first; i < end; i++) {
      const row = planRows[i] as number;
      const v = volume[row] as number;
      jacobian[row * rows + row] = (jacobian[row * rows + row] as number) + k * v;
      residual[row] = k * v * (p[nodeOf[row] as number] as number) - (known[row] as number);
    }
    const { paths, pathFlow, slopeFrom, slopeTo, temperatureK } = this;
    const { fromNode, toNode, fromRow, toRow } = plan;
    const out = this.flowOut;
    const pathEnd = plan.pathStart[island + 1] as number;
    for (let i = plan.pathStart[island] as number; i < pathEnd; i++) {
      const from = p[fromNode[i] as number] as number;
      (paths[i] as AirPath).flow(from, p[toNode[i] as number] as number, temperatureK, out);
      const { q, dFrom, dTo } = out;
      pathFlow[i] = q;
      slopeFrom[i] = dFrom;
      slopeTo[i] = dTo;
      const a = fromRow[i] as number;
      const b = toRow[i] as number;
      if (a >= 0) {
        residual[a] = (residual[a] as number) + weight * q;
        jacobian[a * rows + a] = (jacobian[a * rows + a] as number) + weight * dFrom;
        if (b >= 0) jacobian[a * rows + b] = (jacobian[a * rows + b] as number) + weight * dTo;
      }
      if (b >= 0) {
        residual[b] = (residual[b] as number) - weight * q;
        jacobian[b * rows + b] = (jacobian[b * rows + b] as number) - weight * dTo;
        if (a >= 0) jacobian[b * rows + a] = (jacobian[b * rows + a] as number) - weight * dFrom;
      }
    }
  }

  private shiftWall(trade: AirTrade): void {
    const { volume, p } = this;
    const upper = this.rowOf[trade.upper] as number;
    const lower = this.rowOf[trade.lower] as number;
    trade.volumeShift((p[trade.lower] as number) - (p[trade.upper] as number), this.shiftOut);
    if (upper >= 0) volume[upper] = (volume[upper] as number) - this.shiftOut.shift;
    if (lower >= 0) volume[lower] = (volume[lower] as number) + this.shiftOut.shift;
  }

  private assembleTrade(trade: AirTrade): void {
    const { jacobian, p } = this;
    const rows = this.nodeOf.length;
    const upper = this.rowOf[trade.upper] as number;
    const lower = this.rowOf[trade.lower] as number;
    this.shiftWall(trade);
    const { slope } = this.shiftOut;
    if (upper >= 0) {
      const mass = this.density * (p[trade.upper] as number) * slope;
      jacobian[upper * rows + upper] = (jacobian[upper * rows + upper] as number) + mass;
      if (lower >= 0) jacobian[upper * rows + lower] = (jacobian[upper * rows + lower] as number) - mass;
    }
    if (lower >= 0) {
      const mass = this.density * (p[trade.lower] as number) * slope;
      jacobian[lower * rows + lower] = (jacobian[lower * rows + lower] as number) + mass;
      if (upper >= 0) jacobian[lower * rows + upper] = (jacobian[lower * rows + upper] as number) - mass;
    }
  }

  /** The residuals as pressures, summed, Pa. */
  norm(island: number): number {
    let sum = 0;
    for (let i = this.plan.rowStart[island] as number; i < (this.plan.rowStart[island + 1] as number); i++) {
      const row = this.plan.rows[i] as number;
      sum += Math.abs(this.residual[row] as number) / (this.density * (this.volume[row] as number));
    }
    return sum;
  }

  /** No pressure of the answer can be above this: the highest at hand, or a volume with all its air shut in. */
  highestPressure(island: number): number {
    const { plan, p } = this;
    let highest = 0;
    for (let i = plan.pathStart[island] as number; i < (plan.pathStart[island + 1] as number); i++) {
      highest = Math.max(
        highest,
        p[plan.fromNode[i] as number] as number,
        p[plan.toNode[i] as number] as number,
      );
    }
    for (let i = plan.rowStart[island] as number; i < (plan.rowStart[island + 1] as number); i++) {
      const row = plan.rows[i] as number;
      const smallest = Math.min(this.volume[row] as number, this.ownVolume[row] as number);
      highest = Math.max(highest, (this.known[row] as number) / (this.density * smallest));
    }
    return highest;
  }
}
