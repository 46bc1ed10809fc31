import { assert } from '../../base/assert.ts';
import { FullEquations } from './FullEquations.ts';
import { NodalEquations } from './NodalEquations.ts';
import { type Netlist, type NetlistMode, writeNetlist } from './netlist.ts';
import type { Part } from './Part.ts';
import type { Equations } from './Stamp.ts';
import { StateReader } from './StateReader.ts';
import { StoringPart } from './StoringPart.ts';

export const REFERENCE = 0;

/**
 * Leak from every node to the reference, siemens. It gives a floating node a defined voltage. With a 10 MΩ meter
 * on a node it moves the reading by at most 1e-5 of itself, however weak the source behind that node.
 */
export const LEAK_SIEMENS = 1e-12;

/** After so many rounds only the first part that does not fit changes its mode, which cannot run in circles
 * for parts whose current rises with voltage (least-index rule for linear complementarity problems). */
const FREE_ROUNDS = 6;
const MOST_ROUNDS = 60;

/** Weight of a stage as a share of the step, and how far ahead of the first stage the second starts. */
const GAMMA = 1 - Math.sqrt(0.5);
const REACH = (1 - GAMMA) / GAMMA;
/** A step is not cut finer than this, seconds. */
const SHORTEST_PIECE = 0.4e-6;
/** Up to this length one backward Euler stage may stand in for a step in which a capacitor leaps, seconds. */
const LONGEST_LEAP = 60e-6;
/** A step rougher than this is cut into pieces: one that runs smoothly, and one on whose way a characteristic bends. */
const TOO_ROUGH = 4;
const TOO_ROUGH_AT_BEND = 0.25;

export interface StepOutcome {
  converged: boolean;
  /** How many times the equations were solved. */
  iterations: number;
}

/**
 * An electrical network solved by nodal analysis. In time it goes by the two-stage, second-order, L-stable, singly diagonally
 * implicit Runge–Kutta scheme with γ = 1 − 1/√2 (Alexander 1977), the same as the air's: with y′ = f(y),
 *   y₁ = y₀ + γh f(y₁),   y₂ = y₀ + (1−γ)h f(y₁) + γh f(y₂),   y₂ is the step's result.
 * Error of a step of h against a time constant τ: 0.04 (h/τ)³ of what is left of the transient. Each stage satisfies
 * Kirchhoff's laws by itself. How far the stages disagree is solved for as Hosea and Shampine (1996) do; a step in which
 * it is too much is cut into pieces, down to 0.4 µs: a clamp that lets go on the way is met within 0.5 % of the current.
 * The equations are written again only when a value, a mode or the step's length has changed.
 */
export class Circuit {
  private readonly names: string[] = ['reference'];
  private readonly held: Part[] = [];
  private memoryless: Part[] = [];
  private storing: StoringPart[] = [];
  private injecting: Part[] = [];
  private piecewise: Part[] = [];
  private nodal = new NodalEquations(1, LEAK_SIEMENS, [], 0);
  private full: FullEquations | null = null;
  /** The equations that hold the present factors. */
  private equations: Equations = this.nodal;
  /** The last accepted solution: node voltages by node, then branch currents. */
  private x = new Float64Array(1);
  private trial = new Float64Array(1);
  private spare = new Float64Array(1);
  private compiled = false;
  private dirty = true;
  /** A storing part's own value has changed between stages. */
  private restamp = false;
  private factoredFor = 0;
  private moved = 0;
  private rough = 0;
  /** A characteristic has bent on the way of the step in hand. */
  private bent = false;
  private readonly outcome: StepOutcome = { converged: true, iterations: 0 };

  /** The number of a named node, made on first use. Node 0 is 'reference'. */
  node(name: string): number {
    const found = this.names.indexOf(name);
    if (found >= 0) return found;
    this.compiled = false;
    return this.names.push(name) - 1;
  }

  get nodeNames(): readonly string[] {
    return this.names;
  }

  get parts(): readonly Part[] {
    return this.held;
  }

  add<P extends Part>(part: P): P {
    assert(part.a >= 0 && part.a < this.names.length, 'no such node', { node: part.a });
    assert(part.b >= 0 && part.b < this.names.length, 'no such node', { node: part.b });
    part.attachTo(this);
    this.held.push(part);
    this.compiled = false;
    return part;
  }

  /** Takes all storage. Needed once all nodes and parts are in, and again if any are added. */
  compile(): void {
    const nodes = this.names.length;
    let unknowns = nodes;
    for (const part of this.held) {
      part.branch = unknowns;
      unknowns += part.branches;
    }
    this.storing = this.held.filter((part): part is StoringPart => part instanceof StoringPart);
    this.memoryless = this.held.filter((part) => !(part instanceof StoringPart));
    this.injecting = this.held.filter((part) => part.injects);
    this.piecewise = this.held.filter((part) => part.piecewise);
    this.nodal = new NodalEquations(nodes, LEAK_SIEMENS, this.held, unknowns - nodes);
    this.full = null;
    this.x = new Float64Array(unknowns);
    this.trial = new Float64Array(unknowns);
    this.spare = new Float64Array(unknowns);
    this.compiled = true;
    this.dirty = true;
  }

  /** Says that the matrix no longer holds. Parts call it when a value changes. */
  touch(): void {
    this.dirty = true;
  }

  /**
   * One step of `h` seconds: solves, and takes the solution as the new state.
   * When it does not converge (equations singular, or no set of modes fits) nothing is accepted.
   * The outcome object is the same one every time: read it before the next step.
   */
  step(h: number): StepOutcome {
    assert(this.compiled, 'compile the circuit first');
    assert(h > 0, 'a step needs a length', { h });
    const { outcome } = this;
    outcome.iterations = 0;
    const mayBeCut = h > SHORTEST_PIECE;
    outcome.converged = this.attempt(h, 1, mayBeCut) || (mayBeCut && this.inPieces(h));
    return outcome;
  }

  /** Finds the operating point and sets every state to it: inductors carry their settled current, capacitors none. */
  solveDc(): StepOutcome {
    // A part may change for good when it settles (a fuse melts): then there is another operating point to find.
    assert(this.compiled, 'compile the circuit first');
    const { outcome } = this;
    outcome.iterations = 0;
    for (let round = 0; round <= this.held.length; round++) {
      outcome.converged = this.stage(1, Number.POSITIVE_INFINITY);
      if (outcome.converged) this.accept(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY);
      if (!outcome.converged || !this.dirty) break;
    }
    return outcome;
  }

  /** Voltage of a node against the reference, volts. */
  voltage(node: number): number {
    assert(node >= 0 && node < this.names.length, 'no such node', { node });
    return this.x[node] as number;
  }

  /** The largest change of a node's voltage in the last accepted step, volts. */
  get largestMove(): number {
    return this.moved;
  }

  /**
   * How rough the last step was: 1 is the roughest that still follows every coil within 0.1 % of its largest current.
   * It grows with the square of the step.
   */
  get roughness(): number {
    return this.rough;
  }

  /** Everything that changes while running, in fixed order. */
  state(): number[] {
    assert(this.compiled, 'compile the circuit first');
    const out = Array.from(this.x);
    for (const part of this.held) part.save(out);
    return out;
  }

  /** Puts a saved state back; steps from it give the same digits as they would have without the break. */
  restore(state: readonly number[]): void {
    assert(this.compiled, 'compile the circuit first');
    const reader = new StateReader(state);
    for (let i = 0; i < this.x.length; i++) this.x[i] = reader.next();
    for (const part of this.held) part.load(reader);
    reader.finish();
    this.dirty = true;
  }

  /** The largest sum of part currents left over at a node, amps (Kirchhoff's current law says none). */
  kclResidual(): number {
    const sums = this.spare;
    const nodes = this.names.length;
    for (let node = 0; node < nodes; node++) sums[node] = (this.x[node] as number) * LEAK_SIEMENS;
    for (const part of this.held) {
      sums[part.a] = (sums[part.a] as number) + part.amps;
      sums[part.b] = (sums[part.b] as number) - part.amps;
    }
    let worst = 0;
    for (let node = 1; node < nodes; node++) worst = Math.max(worst, Math.abs(sums[node] as number));
    return worst;
  }

  /** The network in its present state as a SPICE netlist, for checks against an outside solver. */
  exportNetlist(mode: NetlistMode = { kind: 'dc' }): Netlist {
    return writeNetlist(this.names, this.held, mode, LEAK_SIEMENS);
  }

  /** The whole step by two stages. `ramp` is the share of the way that ramping values go in it. Says false and leaves
   * the state as it was when it cannot be solved or, where that counts, is too rough. */
  private attempt(h: number, ramp: number, mayBeTooRough: boolean): boolean {
    const { storing } = this;
    const weight = GAMMA * h;
    this.bent = false;
    for (const part of storing) part.startAfresh();
    if (!this.stage(GAMMA * ramp, weight)) return false;
    for (const part of storing) part.lookAhead(this.trial, REACH);
    if (!this.stage(ramp, weight)) return false;
    const rough = this.judge(weight);
    if (mayBeTooRough && rough > (this.bent ? TOO_ROUGH_AT_BEND : TOO_ROUGH)) return false;
    this.rough = rough;
    if (!this.aPartLeaps()) {
      this.accept(h, weight);
      return true;
    }
    if (mayBeTooRough && h > LONGEST_LEAP) return false;
    return this.byOneStage(h, ramp, mayBeTooRough);
  }

  private aPartLeaps(): boolean {
    for (const part of this.storing) if (part.leaps(this.trial)) return true;
    return false;
  }

  /**
   * Backward Euler, where a small capacitor has been switched: its charge is there long before the step's end, but the
   * second stage would start from far beyond it and draw a current that is not there.
   */
  private byOneStage(h: number, ramp: number, mayBeTooRough: boolean): boolean {
    for (const part of this.storing) part.startAfresh();
    if (!this.stage(ramp, h)) return false;
    for (const part of this.storing) {
      if (mayBeTooRough && part.awayFromSecond(this.trial) > TOO_ROUGH_AT_BEND) return false;
    }
    this.accept(h, h);
    return true;
  }

  /** Roughness of the two stages just solved. */
  private judge(weight: number): number {
    const { storing, spare } = this;
    if (storing.length === 0) return 0;
    spare.fill(0);
    for (const part of storing) part.injectDisagreement(this.trial, spare, weight);
    this.equations.solve(spare);
    let rough = 0;
    for (const part of storing) rough = Math.max(rough, part.roughness(spare));
    return rough;
  }

  /** The same step cut as finely as it takes. Needed where a clamp lets go on the way, or after far too long a step. */
  private inPieces(h: number): boolean {
    const before = this.state();
    let piece = 0.25 * h;
    let left = h;
    let roughest = 0;
    while (left > 0) {
      const last = piece >= 0.75 * left;
      const length = last ? left : piece;
      const fine = length <= 2 * SHORTEST_PIECE;
      if (this.attempt(length, last ? 1 : length / left, !fine)) {
        left = last ? 0 : left - length;
        roughest = Math.max(roughest, this.rough);
        if (this.rough < 1) piece *= 2;
      } else if (fine) {
        this.restore(before);
        return false;
      } else {
        piece = 0.25 * length;
      }
    }
    this.rough = roughest;
    return true;
  }

  /** Solves one backward Euler stage into `trial`, with modes that fit. */
  private stage(share: number, weight: number): boolean {
    for (const part of this.storing) if (part.toStage(share)) this.restamp = true;
    for (let round = 1; round <= MOST_ROUNDS; round++) {
      if ((this.dirty || this.restamp || this.factoredFor !== weight) && !this.factor(weight)) return false;
      this.solve(weight);
      this.outcome.iterations++;
      if (!this.changeModes(round > FREE_ROUNDS)) return true;
    }
    return false;
  }

  private factor(weight: number): boolean {
    const { nodal } = this;
    if (this.dirty) {
      nodal.clear();
      for (const part of this.memoryless) part.stamp(nodal, weight);
      nodal.keep();
    } else {
      nodal.reclaim();
    }
    for (const part of this.storing) part.stamp(nodal, weight);
    const sound = nodal.factor() ? this.use(nodal) : this.factorFull(weight);
    this.dirty = !sound;
    this.restamp = false;
    this.factoredFor = weight;
    return sound;
  }

  /** For networks with a branch of no resistance. */
  private factorFull(weight: number): boolean {
    this.full ??= new FullEquations(this.x.length);
    const { full } = this;
    full.clear();
    for (let node = 1; node < this.names.length; node++) full.conductance(node, REFERENCE, LEAK_SIEMENS);
    for (const part of this.held) part.stamp(full, weight);
    return full.factor() && this.use(full);
  }

  private use(equations: Equations): true {
    this.equations = equations;
    return true;
  }

  private solve(weight: number): void {
    this.trial.fill(0);
    for (const part of this.injecting) part.inject(this.trial, weight);
    this.equations.solve(this.trial);
  }

  /** True when a mode did not fit the trial solution and was changed. */
  private changeModes(oneOnly: boolean): boolean {
    let changed = false;
    for (const part of this.piecewise) {
      if (!part.settle(this.trial)) continue;
      changed = true;
      this.bent = true;
      this.dirty = true;
      if (oneOnly) break;
    }
    return changed;
  }

  private accept(h: number, weight: number): void {
    let moved = 0;
    for (let node = 1; node < this.names.length; node++) {
      moved = Math.max(moved, Math.abs((this.trial[node] as number) - (this.x[node] as number)));
    }
    this.moved = moved;
    this.x.set(this.trial);
    for (const part of this.memoryless) part.accept(this.x, h);
    for (const part of this.storing) part.accept(this.x, weight);
  }
}
