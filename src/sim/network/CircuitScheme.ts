import type { CircuitSolver } from './CircuitSolver.ts';

/** Weight of a stage as a share of the step, and how far ahead of the first stage the second starts. */
const GAMMA = 1 - Math.sqrt(0.5);
const REACH = (1 - GAMMA) / GAMMA;
/** A step is not cut finer than this, seconds. */
const SHORTEST_PIECE = 0.4e-6;
/** Up to this length one backward Euler stage may stand in for a step in which a capacitor leaps, seconds. */
const LONGEST_LEAP = 60e-6;
/** A step rougher than this is cut into pieces: one that runs smoothly, and one on whose way a characteristic bends. */
const TOO_ROUGH = 4;
const TOO_ROUGH_AT_BEND = 0.5;

/** Whose state the scheme moves. */
export interface Stepped {
  /** Takes the trial solution as the state after `h` seconds; `weight` is that of the last stage. */
  accept(h: number, weight: number): void;
  state(): number[];
  restore(state: readonly number[]): void;
}

/**
 * How a circuit goes forward in time: by the two-stage, second-order, L-stable, singly diagonally implicit Runge–Kutta scheme
 * with γ = 1 − 1/√2 (Alexander 1977), the same as the air's: with y′ = f(y),
 *   y₁ = y₀ + γh f(y₁),   y₂ = y₀ + (1−γ)h f(y₁) + γh f(y₂),   y₂ is the step's result.
 * Error of a step of h against a time constant τ: 0.04 (h/τ)³ of what is left of the transient. Each stage satisfies
 * Kirchhoff's laws by itself. How far the stages disagree is solved for as Hosea and Shampine (1996) do; a step in which
 * it is too much is cut into pieces, down to 0.4 µs: a clamp that lets go on the way is met within 0.5 % of the current.
 */
export class CircuitScheme {
  /** How rough the last step was, see `Circuit.roughness`. */
  roughness = 0;

  constructor(
    private readonly solver: CircuitSolver,
    private readonly stepped: Stepped,
  ) {}

  /** One step of h seconds. False leaves the state as it was. */
  advance(h: number): boolean {
    const mayBeCut = h > SHORTEST_PIECE;
    return this.attempt(h, 1, mayBeCut) || (mayBeCut && this.inPieces(h));
  }

  /** The whole step by two stages. `ramp` is the share of the way that ramping values go in it. Says false and leaves
   * the state as it was when it cannot be solved or, where that counts, is too rough. */
  private attempt(h: number, ramp: number, mayBeTooRough: boolean): boolean {
    const { solver, stepped } = this;
    const { storing, trial } = solver;
    const weight = GAMMA * h;
    solver.bent = false;
    for (const part of storing) part.startAfresh();
    if (!solver.stage(GAMMA * ramp, weight)) return false;
    for (const part of storing) part.lookAhead(trial, REACH);
    if (!solver.stage(ramp, weight)) return false;
    const rough = this.judge(weight);
    if (mayBeTooRough && rough > (solver.bent ? TOO_ROUGH_AT_BEND : TOO_ROUGH)) return false;
    this.roughness = rough;
    if (!this.aPartLeaps()) {
      stepped.accept(h, weight);
      return true;
    }
    if (mayBeTooRough && h > LONGEST_LEAP) return false;
    return this.byOneStage(h, ramp, mayBeTooRough);
  }

  private aPartLeaps(): boolean {
    const { storing, trial } = this.solver;
    for (const part of storing) if (part.leaps(trial)) return true;
    return false;
  }

  /**
   * Backward Euler, where a small capacitor has been switched: its charge is there long before the step's end, but the
   * second stage would start from far beyond it and draw a current that is not there.
   */
  private byOneStage(h: number, ramp: number, mayBeTooRough: boolean): boolean {
    const { storing, trial } = this.solver;
    for (const part of storing) part.startAfresh();
    if (!this.solver.stage(ramp, h)) return false;
    for (const part of storing) {
      if (mayBeTooRough && part.awayFromSecond(trial) > TOO_ROUGH_AT_BEND) return false;
    }
    this.stepped.accept(h, h);
    return true;
  }

  /** Roughness of the two stages just solved. */
  private judge(weight: number): number {
    const { solver } = this;
    const { storing, trial, spare: disagreement } = solver;
    if (storing.length === 0) return 0;
    disagreement.fill(0);
    for (const part of storing) part.injectDisagreement(trial, disagreement, weight);
    solver.solveAgain(disagreement);
    let rough = 0;
    for (const part of storing) rough = Math.max(rough, part.roughness(disagreement));
    return rough;
  }

  /** The same step cut as finely as it takes. Needed where a clamp lets go on the way, or after far too long a step. */
  private inPieces(h: number): boolean {
    const before = this.stepped.state();
    let piece = 0.25 * h;
    let left = h;
    let roughest = 0;
    while (left > 0) {
      const last = piece >= 0.75 * left;
      const length = last ? left : piece;
      const fine = length <= 2 * SHORTEST_PIECE;
      if (this.attempt(length, last ? 1 : length / left, !fine)) {
        left = last ? 0 : left - length;
        roughest = Math.max(roughest, this.roughness);
        if (this.roughness < 1) piece *= 2;
      } else if (fine) {
        this.stepped.restore(before);
        return false;
      } else {
        piece = 0.25 * length;
      }
    }
    this.roughness = roughest;
    return true;
  }
}
