import { assert } from '../../base/assert.ts';
import { LinearSystem } from './LinearSystem.ts';
import { type Netlist, type NetlistMode, writeNetlist } from './netlist.ts';
import type { Part } from './Part.ts';
import { Stamp } from './Stamp.ts';
import { StateReader } from './StateReader.ts';

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

export interface StepOutcome {
  converged: boolean;
  /** How many times the equations were solved. */
  iterations: number;
}

/**
 * An electrical network solved by modified nodal analysis (Ho, Ruehli and Brennan 1975), with backward Euler steps.
 * The matrix is built and factored again only when a value, a mode or the step length has changed.
 */
export class Circuit {
  private readonly names: string[] = ['reference'];
  private readonly held: Part[] = [];
  private injecting: Part[] = [];
  private piecewise: Part[] = [];
  private system = new LinearSystem(0);
  private stampOn = new Stamp(this.system);
  /** The last accepted solution: node voltages by node, then branch currents. */
  private x = new Float64Array(1);
  private trial = new Float64Array(1);
  private trialRows = this.trial.subarray(1);
  private sums = new Float64Array(1);
  private compiled = false;
  private dirty = true;
  private factoredFor = 0;
  private moved = 0;
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
    this.injecting = this.held.filter((part) => part.injects);
    this.piecewise = this.held.filter((part) => part.piecewise);
    this.system = new LinearSystem(unknowns - 1);
    this.stampOn = new Stamp(this.system);
    this.x = new Float64Array(unknowns);
    this.trial = new Float64Array(unknowns);
    this.trialRows = this.trial.subarray(1);
    this.sums = new Float64Array(nodes);
    this.compiled = true;
    this.dirty = true;
  }

  /** Says that the matrix no longer holds. Parts call it when a value changes. */
  touch(): void {
    this.dirty = true;
  }

  /**
   * One backward Euler step of `h` seconds: solves, and takes the solution as the new state.
   * When it does not converge (equations singular, or no set of modes fits) nothing is accepted.
   * The outcome object is the same one every time: read it before the next step.
   */
  step(h: number): StepOutcome {
    assert(h > 0, 'a step needs a length', { h });
    return this.advance(h);
  }

  /** Finds the operating point and sets every state to it: inductors carry their settled current, capacitors none. */
  solveDc(): StepOutcome {
    // A part may change for good when it settles (a fuse melts): then there is another operating point to find.
    let outcome = this.advance(Number.POSITIVE_INFINITY);
    for (let round = 0; round < this.held.length && outcome.converged && this.dirty; round++) {
      outcome = this.advance(Number.POSITIVE_INFINITY);
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
    const sums = this.sums;
    for (let node = 0; node < sums.length; node++) sums[node] = (this.x[node] as number) * LEAK_SIEMENS;
    for (const part of this.held) {
      sums[part.a] = (sums[part.a] as number) + part.amps;
      sums[part.b] = (sums[part.b] as number) - part.amps;
    }
    let worst = 0;
    for (let node = 1; node < sums.length; node++) worst = Math.max(worst, Math.abs(sums[node] as number));
    return worst;
  }

  /** The network in its present state as a SPICE netlist, for checks against an outside solver. */
  exportNetlist(mode: NetlistMode = { kind: 'dc' }): Netlist {
    return writeNetlist(this.names, this.held, mode, LEAK_SIEMENS);
  }

  private advance(h: number): StepOutcome {
    assert(this.compiled, 'compile the circuit first');
    const { outcome } = this;
    outcome.converged = false;
    outcome.iterations = 0;
    while (!outcome.converged && outcome.iterations < MOST_ROUNDS) {
      if ((this.dirty || this.factoredFor !== h) && !this.factor(h)) return outcome;
      this.solve(h);
      outcome.iterations++;
      outcome.converged = !this.changeModes(outcome.iterations > FREE_ROUNDS);
    }
    if (outcome.converged) this.accept(h);
    return outcome;
  }

  private factor(h: number): boolean {
    this.system.clear();
    for (let node = 1; node < this.names.length; node++) this.stampOn.entry(node, node, LEAK_SIEMENS);
    for (const part of this.held) part.stamp(this.stampOn, h);
    const sound = this.system.factor();
    this.dirty = !sound;
    this.factoredFor = h;
    return sound;
  }

  private solve(h: number): void {
    this.trial.fill(0);
    for (const part of this.injecting) part.inject(this.trial, h);
    this.trial[REFERENCE] = 0;
    this.system.solve(this.trialRows);
  }

  /** True when a mode did not fit the trial solution and was changed. */
  private changeModes(oneOnly: boolean): boolean {
    let changed = false;
    for (const part of this.piecewise) {
      if (!part.settle(this.trial)) continue;
      changed = true;
      this.dirty = true;
      if (oneOnly) break;
    }
    return changed;
  }

  private accept(h: number): void {
    let moved = 0;
    for (let node = 1; node < this.names.length; node++) {
      moved = Math.max(moved, Math.abs((this.trial[node] as number) - (this.x[node] as number)));
    }
    this.moved = moved;
    this.x.set(this.trial);
    for (const part of this.held) part.accept(this.x, h);
  }
}
