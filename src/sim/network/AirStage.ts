import { numberRows } from '../../base/numberRows.ts';
import { AirBalance } from './AirBalance.ts';
import type { AirLayout } from './AirLayout.ts';
import type { AirPlan } from './AirPlan.ts';

/** Newton's last correction, taken together with the linear flows, may be this large. */
const PRESSURE_TOLERANCE_PA = 1;
/** A first correction of less than this need not be held below the highest pressure there can be. */
const FREE_PA = 500;
const MAX_ITERATIONS = 14;
const MAX_HALVINGS = 10;

/**
 * One implicit stage of the air network: finds pressures p so that every volume holds
 *
 *     p·V(p)/(R·T) = known + weight·(net mass flow at p)
 *
 * by damped Newton, island by island of the present plan; islands that are not live stay as they are. The guess of the
 * pressures stands in `balance.p`, and so does the answer. Nothing is allocated after construction.
 */
export class AirStage {
  readonly balance: AirBalance;
  /** By island: 1 while it is to be solved. */
  readonly live: Uint8Array;
  iterations = 0;
  private readonly delta: Float64Array;
  private readonly before: Float64Array;
  private readonly nodeOf: Int32Array;
  private capPa = 0;

  constructor(layout: AirLayout, plan: AirPlan) {
    const rows = layout.nodeOf.length;
    this.balance = new AirBalance(layout, plan);
    this.nodeOf = layout.nodeOf;
    const { delta, before } = numberRows({ delta: rows, before: rows });
    this.delta = delta;
    this.before = before;
    this.live = new Uint8Array(rows);
  }

  /** Newton to convergence in all live islands. False leaves `p` at the last trial. `weight` in seconds. */
  solve(weight: number): boolean {
    this.iterations = 0;
    for (let island = 0; island < this.balance.plan.islands; island++) {
      if (this.live[island] === 1 && !this.solveIsland(island, weight)) return false;
    }
    return true;
  }

  /** Divides masses by row, in kg, through the matrix that `solve` has just factored: what pressures they amount to, Pa. */
  massesToPressures(masses: Float64Array): void {
    for (let island = 0; island < this.balance.plan.islands; island++) {
      if (this.live[island] === 1)
        this.balance.plan.elimination[island]?.solve(this.balance.jacobian, masses);
    }
  }

  private solveIsland(island: number, weight: number): boolean {
    const { plan } = this.balance;
    const first = plan.rowStart[island] as number;
    const end = plan.rowStart[island + 1] as number;
    this.balance.assemble(island, weight);
    let norm = this.balance.norm(island);
    this.capPa = Number.POSITIVE_INFINITY;
    for (let iteration = 1; iteration <= MAX_ITERATIONS; iteration++) {
      this.iterations++;
      if (!this.linearSolve(island)) return false;
      const largest = this.largestDelta(first, end);
      if (largest < PRESSURE_TOLERANCE_PA) {
        this.acceptLinear(island);
        return true;
      }
      if (iteration === 1 && largest > FREE_PA) this.capPa = this.balance.highestPressure(island);
      for (let i = first; i < end; i++) {
        const row = plan.rows[i] as number;
        this.before[row] = this.balance.p[this.nodeOf[row] as number] as number;
      }
      let damping = 1;
      for (let halving = 0; ; halving++) {
        this.tryStep(first, end, damping);
        this.balance.assemble(island, weight);
        const trial = this.balance.norm(island);
        if (trial <= norm * (1 - 1e-4 * damping) || halving === MAX_HALVINGS) {
          norm = trial;
          break;
        }
        damping *= 0.5;
      }
    }
    return false;
  }

  private linearSolve(island: number): boolean {
    const { delta } = this;
    const { plan, residual, jacobian } = this.balance;
    for (let i = plan.rowStart[island] as number; i < (plan.rowStart[island + 1] as number); i++) {
      const row = plan.rows[i] as number;
      delta[row] = -(residual[row] as number);
    }
    return plan.elimination[island]?.factorAndSolve(jacobian, delta) === true;
  }

  private largestDelta(first: number, end: number): number {
    let largest = 0;
    for (let i = first; i < end; i++) {
      largest = Math.max(largest, Math.abs(this.delta[this.balance.plan.rows[i] as number] as number));
    }
    return largest;
  }

  /** A part of the Newton step, kept within what pressures can be. */
  private tryStep(first: number, end: number, damping: number): void {
    for (let i = first; i < end; i++) {
      const row = this.balance.plan.rows[i] as number;
      const from = this.before[row] as number;
      const to = from + damping * (this.delta[row] as number);
      this.balance.p[this.nodeOf[row] as number] = Math.min(Math.max(to, 0.2 * from), this.capPa);
    }
  }

  /**
   * Takes the last linear step together with the flows of the same linear model. What a path takes from one volume
   * it gives to the next to the last bit, and the masses fit the pressures even behind a wide open port.
   */
  private acceptLinear(island: number): void {
    const { plan } = this.balance;
    for (let i = plan.pathStart[island] as number; i < (plan.pathStart[island + 1] as number); i++) {
      const a = plan.fromRow[i] as number;
      const b = plan.toRow[i] as number;
      let q = this.balance.pathFlow[i] as number;
      if (a >= 0) q += (this.balance.slopeFrom[i] as number) * (this.delta[a] as number);
      if (b >= 0) q += (this.balance.slopeTo[i] as number) * (this.delta[b] as number);
      this.balance.pathFlow[i] = q;
    }
    for (let i = plan.rowStart[island] as number; i < (plan.rowStart[island + 1] as number); i++) {
      const row = plan.rows[i] as number;
      const node = this.nodeOf[row] as number;
      this.balance.p[node] = (this.balance.p[node] as number) + (this.delta[row] as number);
    }
  }
}
