import { pow } from '../../base/maths.ts';
import { numberRows } from '../../base/numberRows.ts';
import type { AirLayout, AirLevel } from './AirLayout.ts';
import type { AirStage } from './AirStage.ts';
import type { AirState } from './AirState.ts';
import { copyNumbers } from './copyNumbers.ts';

const GAMMA = 1 - Math.sqrt(0.5);
/** Beyond this difference between its stages, and more of it far from ambient, backward Euler replaces the second-order step. */
const STAGE_GAP_PA = 500;
const STAGE_GAP_SHARE = 0.05;
/** An island in which every pressure stands this still is left as it is. */
const CALM_PA_PER_S = 2e-4;

/** A local error allowed in one step, Pa, and more of it the further a pressure is from ambient. */
const ERROR_PA = 1;
const ERROR_SHARE = 5e-4;
/** What a straight line from one step's end to the next may miss by between them, where a step lasts long enough to see. */
const BEND_PA = 10;
const BEND_SHARE = 2e-3;
const VISIBLE_S = 0.05;

/** A step this short is not made shorter for its error's sake: backward Euler carries it through. */
export const FINE_ENOUGH_S = 0.5e-3;
/** No guess of a pressure is below this share of what it was. */
const LEAST_GUESS = 0.3;
const SAFETY = 0.8;
/** After backward Euler the next step may be twice as long, but no longer where the second-order step was off by more than this. */
const AFTER_EULER = 2;
const STIFF_ERROR = 4;
const STIFF_GAP = 0.3;
const GAP_SAFETY = 0.7;
const GAP_MOST_SHRINK = 0.1;
const MOST_SHRINK = 0.1;
const MOST_GROWTH = 5;
/** After a step that had to be tried again, the next is not longer than this much of it. */
const AFTER_REFUSAL = 2.5;
/** An error of less says nothing more. */
const LEAST_ERROR = 1e-9;

// A third-order quadrature of the slopes at 0, γ and 1, less the scheme's own.
const MIDDLE = 1 / (6 * GAMMA * (1 - GAMMA));
const LAST = 0.5 - GAMMA * MIDDLE;
const ERROR_START = 1 - MIDDLE - LAST;
const ERROR_MIDDLE = MIDDLE - (1 - GAMMA);
const ERROR_LAST = LAST - GAMMA;
/** Largest miss of the straight line, from the first stage's distance to it: both are shares of h²·p″. */
const BEND_OF_STAGE = 0.125 / (GAMMA * (0.5 - GAMMA));

/**
 * One step of an air state, worked out but not yet taken: the two-stage, second-order, L-stable singly diagonally implicit
 * Runge–Kutta scheme with γ = 1 − 1/√2 (Alexander 1977). Its second stage reaches ahead of the first; where that is so far
 * that it might push air past a check valve that cannot give it back, one backward Euler step stands in, which never
 * overshoots. The local error is judged against a third-order quadrature of the same slopes, put through the last
 * stage's matrix so that what is stiff and settled does not count (the usual filter for stiff error estimates).
 *
 * What it works out depends on the state, the volumes aimed at and h alone, to the last bit.
 */
export class AirScheme {
  /** Newton iterations of the last `foresee`. */
  iterations = 0;
  /** Local error of the second-order step of the last `foresee` as a multiple of what is allowed. */
  error = 0;
  /** True when backward Euler stood in for it, whatever its error. */
  euler = false;
  /** Miss of a straight line through the step, likewise. */
  bend = 0;
  /** How far apart its two stages were, likewise; infinite where a stage was not found. */
  gap = 0;
  /** By node, Pa, at the step's end. */
  readonly endPressure: Float64Array;
  /** By row, m³, before moving walls, at the step's end. */
  readonly endVolume: Float64Array;
  /** By open path of the stage's plan: mass carried in the step, kg. */
  readonly carried: Float64Array;
  private readonly startFlow: Float64Array;
  private readonly firstFlow: Float64Array;
  private readonly firstPressure: Float64Array;
  private readonly slope: Float64Array; // by row, kg/s
  private readonly stirs: Uint8Array; // by island: 1 where it moves of itself

  constructor(
    private readonly layout: AirLayout,
    private readonly state: AirState,
    private readonly stage: AirStage,
  ) {
    const paths = layout.paths.length;
    const rows = layout.nodeOf.length;
    const nodes = layout.rowOf.length;
    const numbers = numberRows({
      endPressure: nodes,
      endVolume: rows,
      carried: paths,
      startFlow: paths,
      firstFlow: paths,
      firstPressure: nodes,
      slope: rows,
    });
    this.endPressure = numbers.endPressure;
    this.endVolume = numbers.endVolume;
    this.carried = numbers.carried;
    this.startFlow = numbers.startFlow;
    this.firstFlow = numbers.firstFlow;
    this.firstPressure = numbers.firstPressure;
    this.slope = numbers.slope;
    this.stirs = new Uint8Array(rows);
  }

  /** Looks at the present state what flows and which islands stir. To be done before `foresee` whenever the state is another. */
  look(): void {
    const { state, stage, startFlow } = this;
    const { plan, pathFlow, density } = stage.balance;
    copyNumbers(stage.balance.p, state.p);
    copyNumbers(stage.balance.ownVolume, state.volumeNow);
    stage.balance.settle();
    copyNumbers(startFlow, pathFlow);
    this.netOf(pathFlow);
    for (let island = 0; island < plan.islands; island++) {
      let stirs = 0;
      for (let i = plan.rowStart[island] as number; i < (plan.rowStart[island + 1] as number); i++) {
        const row = plan.rows[i] as number;
        const rate = Math.abs(this.slope[row] as number);
        if (rate > CALM_PA_PER_S * density * stage.balance.volumeOf(row)) stirs = 1;
      }
      this.stirs[island] = stirs;
    }
  }

  /** Which islands move, now or towards `state.volumeNext`. False when none does. */
  wake(): boolean {
    const { state, stage } = this;
    const { plan } = stage.balance;
    let any = 0;
    for (let island = 0; island < plan.islands; island++) {
      let moves = this.stirs[island] as number;
      for (let i = plan.rowStart[island] as number; i < (plan.rowStart[island + 1] as number); i++) {
        const row = plan.rows[i] as number;
        if (state.volumeNext[row] !== state.volumeNow[row]) moves = 1;
      }
      stage.live[island] = moves;
      any |= moves;
    }
    return any === 1;
  }

  /**
   * Works out one step of h seconds from what was looked at towards `state.volumeNext`. False when no pressures were
   * found, or none but by a backward Euler step so long that a `choosy` caller, who can take a shorter one, does not want it.
   */
  foresee(h: number, choosy = false): boolean {
    this.iterations = 0;
    this.error = 0;
    this.euler = false;
    this.bend = 0;
    this.gap = Number.POSITIVE_INFINITY;
    copyNumbers(this.endVolume, this.state.volumeNext);
    if (!this.wake()) {
      copyNumbers(this.endPressure, this.state.p);
      for (let i = 0; i < this.carried.length; i++) this.carried[i] = h * (this.startFlow[i] as number);
      return true;
    }
    const fits = this.secondOrder(h) && (h > FINE_ENOUGH_S || this.error <= 1);
    if (!fits && ((choosy && h > FINE_ENOUGH_S) || !this.backwardEuler(h))) return false;
    copyNumbers(this.endPressure, this.stage.balance.p);
    return true;
  }

  /** Takes the step last worked out. */
  take(h: number): void {
    const { state, stage, carried } = this;
    const { plan } = stage.balance;
    for (let island = 0; island < plan.islands; island++) {
      if (stage.live[island] !== 1) continue;
      for (let i = plan.pathStart[island] as number; i < (plan.pathStart[island + 1] as number); i++) {
        const kg = carried[i] as number;
        this.receive(plan.fromNode[i] as number, plan.fromRow[i] as number, -kg);
        this.receive(plan.toNode[i] as number, plan.toRow[i] as number, kg);
      }
    }
    state.finishStep(this.endPressure, h, h * Math.min(this.growth, this.mostGrowth(h)));
  }

  /** By what factor the next step may be longer than the one worked out, or a second try at it must be shorter. */
  get growth(): number {
    if (this.euler) return this.error > STIFF_ERROR || this.gap > STIFF_GAP ? 1 : AFTER_EULER;
    // A third-order error goes by the cube root; one too large is seldom of third order yet.
    const error = Math.max(this.error, LEAST_ERROR);
    const byError = SAFETY / (error > 1 ? Math.sqrt(error) : pow(error, 1 / 3));
    const byBend = SAFETY / Math.sqrt(Math.max(this.bend, LEAST_ERROR));
    return Math.max(Math.min(byError, byBend), MOST_SHRINK);
  }

  /** A step that ended early for something else's sake does not make the air forget what suits it. */
  private mostGrowth(h: number): number {
    const { triedAgain, nextStep } = this.state;
    return triedAgain ? AFTER_REFUSAL : Math.max(MOST_GROWTH, nextStep / h);
  }

  /** By what factor a second try must be shorter where the stages were too far apart: their distance goes by the square. */
  get shrink(): number {
    return Math.min(Math.max(GAP_SAFETY / Math.sqrt(this.gap), GAP_MOST_SHRINK), 0.5);
  }

  /** How far the step worked out goes past a level that lies in its way, Pa; −1 when it does not reach it. */
  pastLevel(level: AirLevel): number {
    const move = (this.endPressure[level.node] as number) - (this.state.p[level.node] as number);
    const gap = level.pa - (this.state.p[level.node] as number);
    return move * gap > 0 ? Math.abs(move) - Math.abs(gap) : -1;
  }

  /**
   * The share of the step worked out at which a node passes a pressure that lies on its way, Pa, by the parabola through
   * the step's start, its first stage and its end; by the straight line after backward Euler.
   */
  shareTo(node: number, pa: number): number {
    const start = this.state.p[node] as number;
    const end = (this.endPressure[node] as number) - start;
    const bow = this.euler
      ? 0
      : (((this.firstPressure[node] as number) - start) / GAMMA - end) / (2 * GAMMA - 1);
    const along = end - bow;
    const to = pa - start;
    const root = Math.sqrt(Math.max(along * along + 4 * bow * to, 0));
    return (2 * to) / (along + (end < 0 ? -root : root));
  }

  private secondOrder(h: number): boolean {
    const { state, stage, slope } = this;
    copyNumbers(stage.balance.p, state.p);
    copyNumbers(stage.balance.known, state.mass);
    for (let row = 0; row < slope.length; row++) {
      const v = state.volumeNow[row] as number;
      stage.balance.ownVolume[row] = v + GAMMA * ((state.volumeNext[row] as number) - v);
    }
    if (!this.solve(GAMMA * h)) return false;
    copyNumbers(this.firstFlow, stage.balance.pathFlow);
    copyNumbers(this.firstPressure, stage.balance.p);
    this.netOf(stage.balance.pathFlow);
    for (let row = 0; row < slope.length; row++) {
      const known = (state.mass[row] as number) + (1 - GAMMA) * h * (slope[row] as number);
      if (!(known > 0)) return false;
      stage.balance.known[row] = known;
    }
    copyNumbers(stage.balance.ownVolume, state.volumeNext);
    this.reachAhead();
    if (!this.solve(GAMMA * h)) return false;
    this.gap = this.stageGap(h);
    if (this.gap > 1) return false;
    const { carried } = this;
    for (let i = 0; i < stage.balance.paths.length; i++) {
      carried[i] =
        h * ((1 - GAMMA) * (this.firstFlow[i] as number) + GAMMA * (stage.balance.pathFlow[i] as number));
    }
    this.judge(h);
    return true;
  }

  /** Guesses the pressures at the step's end by the straight line through its start and first stage. */
  private reachAhead(): void {
    const { stage, state } = this;
    for (let node = 0; node < stage.balance.p.length; node++) {
      const start = state.p[node] as number;
      const guess = start + ((stage.balance.p[node] as number) - start) / GAMMA;
      stage.balance.p[node] = Math.max(guess, LEAST_GUESS * start);
    }
  }

  private backwardEuler(h: number): boolean {
    const { state, stage, carried } = this;
    // A second-order end, too far off to be taken, is still the better guess.
    if (this.gap === Number.POSITIVE_INFINITY) copyNumbers(stage.balance.p, state.p);
    copyNumbers(stage.balance.known, state.mass);
    copyNumbers(stage.balance.ownVolume, state.volumeNext);
    if (!this.solve(h)) return false;
    for (let i = 0; i < stage.balance.paths.length; i++)
      carried[i] = h * (stage.balance.pathFlow[i] as number);
    this.euler = true;
    this.bend = 0;
    return true;
  }

  /** Fills `error` and `bend` after a second-order step. */
  private judge(h: number): void {
    const { state, stage, slope, layout } = this;
    this.mixSlopes(h * ERROR_START, h * ERROR_MIDDLE, h * ERROR_LAST);
    stage.massesToPressures(slope);
    for (let row = 0; row < slope.length; row++) {
      const node = layout.nodeOf[row] as number;
      const end = stage.balance.p[node] as number;
      const start = state.p[node] as number;
      if (end === start) continue;
      const distance = this.distance(node);
      const error = Math.abs(slope[row] as number) / (ERROR_PA + ERROR_SHARE * distance);
      const straight = start + GAMMA * (end - start);
      const miss = BEND_OF_STAGE * Math.abs((this.firstPressure[node] as number) - straight);
      this.error = Math.max(this.error, error);
      if (h > VISIBLE_S) this.bend = Math.max(this.bend, miss / (BEND_PA + BEND_SHARE * distance));
    }
  }

  /** How far a node's pressure at the step's end is from ambient, Pa. */
  private distance(node: number): number {
    const { ambient } = this.layout;
    if (ambient < 0) return 0;
    return Math.abs((this.stage.balance.p[node] as number) - (this.state.p[ambient] as number));
  }

  private solve(weight: number): boolean {
    const solved = this.stage.solve(weight);
    this.iterations += this.stage.iterations;
    return solved;
  }

  /**
   * How far the second stage's flows would have moved a volume from where the first stage's would, as a multiple of what is
   * allowed.
   */
  private stageGap(h: number): number {
    const { stage, slope, layout } = this;
    this.mixSlopes(0, -1, 1);
    let gap = 0;
    for (let row = 0; row < slope.length; row++) {
      const pa =
        (GAMMA * h * Math.abs(slope[row] as number)) / (stage.balance.density * stage.balance.volumeOf(row));
      const distance = this.distance(layout.nodeOf[row] as number);
      gap = Math.max(gap, pa / (STAGE_GAP_PA + STAGE_GAP_SHARE * distance));
    }
    return gap;
  }

  /** Fills `slope` with a sum of the flows at the start, of the first stage and of the second, into each live row. */
  private mixSlopes(start: number, first: number, second: number): void {
    const { live } = this.stage;
    const { plan, pathFlow } = this.stage.balance;
    const { slope } = this;
    slope.fill(0);
    for (let island = 0; island < plan.islands; island++) {
      if (live[island] !== 1) continue;
      for (let i = plan.pathStart[island] as number; i < (plan.pathStart[island + 1] as number); i++) {
        const q =
          start * (this.startFlow[i] as number) +
          first * (this.firstFlow[i] as number) +
          second * (pathFlow[i] as number);
        const a = plan.fromRow[i] as number;
        const b = plan.toRow[i] as number;
        if (a >= 0) slope[a] = (slope[a] as number) - q;
        if (b >= 0) slope[b] = (slope[b] as number) + q;
      }
    }
  }

  /** Fills `slope` with the flow into each row, kg/s. */
  private netOf(pathFlow: Float64Array): void {
    const { slope } = this;
    const { plan } = this.stage.balance;
    slope.fill(0);
    for (let i = 0; i < plan.pathAt.length; i++) {
      const a = plan.fromRow[i] as number;
      const b = plan.toRow[i] as number;
      if (a >= 0) slope[a] = (slope[a] as number) - (pathFlow[i] as number);
      if (b >= 0) slope[b] = (slope[b] as number) + (pathFlow[i] as number);
    }
  }

  private receive(node: number, row: number, kg: number): void {
    const { mass, inflow } = this.state;
    if (row >= 0) mass[row] = (mass[row] as number) + kg;
    else inflow[node] = (inflow[node] as number) - kg;
  }
}
