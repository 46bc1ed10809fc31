import type { AirLayout } from './AirLayout.ts';
import type { AirPath } from './AirPart.ts';
import type { AirStage } from './AirStage.ts';
import type { AirState } from './AirState.ts';
import { AIR_GAS_CONSTANT } from './airGas.ts';

const GAMMA = 1 - Math.sqrt(0.5);
/** Beyond this difference between its stages the second-order step is replaced by backward Euler. */
const STAGE_GAP_PA = 500;
/** The finest a step is cut, as a fraction of it, where the equations cannot be solved for the whole. */
const FINEST_PIECE = 1 / 4096;

/**
 * Advances an air state by the two-stage, second-order, L-stable singly diagonally implicit Runge–Kutta scheme with
 * γ = 1 − 1/√2 (Alexander 1977). Its second stage reaches ahead of the first; where that is so far that it might push air
 * past a check valve that cannot give it back, one backward Euler step stands in, which never overshoots.
 */
export class AirScheme {
  /** Newton iterations of the last `advance`. */
  iterations = 0;
  private readonly firstFlow: Float64Array; // by path, kg/s
  private readonly flowChange: Float64Array; // by path, kg/s
  private readonly net: Float64Array; // by row, kg/s
  private readonly target: Float64Array; // by row, m³

  constructor(
    private readonly layout: AirLayout,
    private readonly state: AirState,
    private readonly stage: AirStage,
  ) {
    this.firstFlow = new Float64Array(layout.paths.length);
    this.flowChange = new Float64Array(layout.paths.length);
    this.net = new Float64Array(layout.nodeOf.length);
    this.target = new Float64Array(layout.nodeOf.length);
  }

  /** One step of h seconds. False leaves the state as it was. */
  advance(h: number): boolean {
    this.iterations = 0;
    return this.attempt(h) || this.inPieces(h);
  }

  private attempt(h: number): boolean {
    if (!this.secondOrder(h) && !this.backwardEuler(h)) return false;
    this.state.finishStep(this.stage.p, h);
    return true;
  }

  /** The same step cut as finely as it takes. Seldom needed, and only for steps far longer than suggested. */
  private inPieces(h: number): boolean {
    const { state, target } = this;
    state.keep();
    target.set(state.volumeNext);
    let piece = 0.5 * h;
    for (let left = h; left > 0; ) {
      const length = Math.min(piece, left);
      for (let row = 0; row < target.length; row++) {
        const now = state.volumeNow[row] as number;
        state.volumeNext[row] =
          length === left ? (target[row] as number) : now + ((target[row] as number) - now) * (length / left);
      }
      if (this.attempt(length)) {
        left -= length;
        continue;
      }
      piece = 0.5 * length;
      if (piece < h * FINEST_PIECE) {
        state.revert();
        return false;
      }
    }
    return true;
  }

  private secondOrder(h: number): boolean {
    const { state, stage, net } = this;
    stage.p.set(state.p);
    stage.known.set(state.mass);
    for (let row = 0; row < net.length; row++) {
      const v = state.volumeNow[row] as number;
      stage.ownVolume[row] = v + GAMMA * ((state.volumeNext[row] as number) - v);
    }
    if (!this.solve(GAMMA * h)) return false;
    this.firstFlow.set(stage.pathFlow);
    this.netOf(stage.pathFlow);
    for (let row = 0; row < net.length; row++) {
      const known = (state.mass[row] as number) + (1 - GAMMA) * h * (net[row] as number);
      if (!(known > 0)) return false;
      stage.known[row] = known;
    }
    stage.ownVolume.set(state.volumeNext);
    if (!this.solve(GAMMA * h)) return false;
    if (this.stageGap(h) > STAGE_GAP_PA) return false;
    for (let i = 0; i < this.firstFlow.length; i++) {
      this.carry(
        i,
        h * ((1 - GAMMA) * (this.firstFlow[i] as number) + GAMMA * (stage.pathFlow[i] as number)),
      );
    }
    return true;
  }

  private backwardEuler(h: number): boolean {
    const { state, stage } = this;
    stage.p.set(state.p);
    stage.known.set(state.mass);
    stage.ownVolume.set(state.volumeNext);
    if (!this.solve(h)) return false;
    for (let i = 0; i < this.firstFlow.length; i++) this.carry(i, h * (stage.pathFlow[i] as number));
    return true;
  }

  private solve(weight: number): boolean {
    const solved = this.stage.solve(weight);
    this.iterations += this.stage.iterations;
    return solved;
  }

  /** How far, in Pa, the second stage's flows would have moved a volume from where the first stage's would. */
  private stageGap(h: number): number {
    const { stage } = this;
    for (let i = 0; i < this.firstFlow.length; i++) {
      this.flowChange[i] = (stage.pathFlow[i] as number) - (this.firstFlow[i] as number);
    }
    this.netOf(this.flowChange);
    let gap = 0;
    for (let row = 0; row < this.net.length; row++) {
      gap = Math.max(gap, Math.abs(this.net[row] as number) / stage.volumeOf(row));
    }
    return gap * GAMMA * h * AIR_GAS_CONSTANT * this.layout.temperatureK;
  }

  /** Fills `net` with the flow into each row, kg/s. */
  private netOf(pathFlow: Float64Array): void {
    const { net } = this;
    const { rowOf, paths } = this.layout;
    net.fill(0);
    for (let i = 0; i < paths.length; i++) {
      const path = paths[i] as AirPath;
      const a = rowOf[path.from] as number;
      const b = rowOf[path.to] as number;
      if (a >= 0) net[a] = (net[a] as number) - (pathFlow[i] as number);
      if (b >= 0) net[b] = (net[b] as number) + (pathFlow[i] as number);
    }
  }

  /** Moves mass in kg along a path: the same number leaves one end and enters the other. */
  private carry(index: number, kg: number): void {
    const path = this.layout.paths[index] as AirPath;
    this.receive(path.from, -kg);
    this.receive(path.to, kg);
  }

  private receive(node: number, kg: number): void {
    const { mass, inflow } = this.state;
    const row = this.layout.rowOf[node] as number;
    if (row >= 0) mass[row] = (mass[row] as number) + kg;
    else inflow[node] = (inflow[node] as number) - kg;
  }
}
