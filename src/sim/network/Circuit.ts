import { assert } from '../../base/assert.ts';
import { CircuitScheme } from './CircuitScheme.ts';
import { CircuitSolver, LEAK_SIEMENS } from './CircuitSolver.ts';
import { type Netlist, type NetlistMode, writeNetlist } from './netlist.ts';
import type { Part } from './Part.ts';
import { StateReader } from './StateReader.ts';

export interface StepOutcome {
  converged: boolean;
  /** How many times the equations were solved. */
  iterations: number;
}

interface Compiled {
  /** The last accepted solution: node voltages by node, then branch currents. */
  readonly x: Float64Array;
  readonly solver: CircuitSolver;
  readonly scheme: CircuitScheme;
}

/** An electrical network: named nodes, parts between them, and the state they are in. */
export class Circuit {
  private readonly names: string[] = ['reference'];
  private readonly held: Part[] = [];
  private compiled: Compiled | null = null;
  private moved = 0;
  /** Counts accepted solutions. */
  accepted = 0;
  private readonly outcome: StepOutcome = { converged: true, iterations: 0 };

  /** The number of a named node, made on first use. Node 0 is 'reference'. */
  node(name: string): number {
    const found = this.names.indexOf(name);
    if (found >= 0) return found;
    this.compiled = null;
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
    this.compiled = null;
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
    const solver = new CircuitSolver(nodes, unknowns, this.held);
    const scheme = new CircuitScheme(solver, {
      accept: (h, weight) => this.accept(h, weight),
      state: () => this.state(),
      restore: (state) => this.restore(state),
    });
    this.compiled = { x: new Float64Array(unknowns), solver, scheme };
  }

  /** The last accepted solution: node voltages by node, then branch currents. Not to be written to. */
  get solution(): Float64Array {
    return this.ready.x;
  }

  /** Says that the matrix no longer holds. Parts call it when a value changes. */
  touch(): void {
    this.compiled?.solver.touch();
  }

  /**
   * One step of `h` seconds: solves, and takes the solution as the new state.
   * When it does not converge (equations singular, or no set of modes fits) nothing is accepted.
   * The outcome object is the same one every time: read it before the next step.
   */
  step(h: number): StepOutcome {
    assert(h > 0, 'a step needs a length', { h });
    const { solver, scheme } = this.ready;
    solver.iterations = 0;
    this.outcome.converged = scheme.advance(h);
    this.outcome.iterations = solver.iterations;
    return this.outcome;
  }

  /** Finds the operating point and sets every state to it: inductors carry their settled current, capacitors none. */
  solveDc(): StepOutcome {
    // A part may change for good when it settles (a fuse melts): then there is another operating point to find.
    const { solver } = this.ready;
    const { outcome } = this;
    solver.iterations = 0;
    for (const part of solver.storing) part.startAfresh();
    for (let round = 0; round <= this.held.length; round++) {
      outcome.converged = solver.stage(1, Number.POSITIVE_INFINITY);
      if (outcome.converged) this.accept(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY);
      if (!outcome.converged || !solver.touched) break;
    }
    outcome.iterations = solver.iterations;
    return outcome;
  }

  /** Voltage of a node against the reference, volts. */
  voltage(node: number): number {
    assert(node >= 0 && node < this.names.length, 'no such node', { node });
    return this.ready.x[node] as number;
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
    return this.ready.scheme.roughness;
  }

  /** Everything that changes while running, in fixed order. */
  state(): number[] {
    const out = Array.from(this.ready.x);
    for (const part of this.held) part.save(out);
    return out;
  }

  /** Puts a saved state back; steps from it give the same digits as they would have without the break. */
  restore(state: readonly number[]): void {
    const { x, solver } = this.ready;
    const reader = new StateReader(state);
    for (let i = 0; i < x.length; i++) x[i] = reader.next();
    for (const part of this.held) part.load(reader);
    reader.finish();
    solver.touch();
  }

  /** The largest sum of part currents left over at a node, amps (Kirchhoff's current law says none). */
  kclResidual(): number {
    const { x } = this.ready;
    const nodes = this.names.length;
    const sums = new Float64Array(nodes);
    for (let node = 0; node < nodes; node++) sums[node] = (x[node] as number) * LEAK_SIEMENS;
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

  private get ready(): Compiled {
    const { compiled } = this;
    assert(compiled !== null, 'compile the circuit first');
    return compiled;
  }

  private accept(h: number, weight: number): void {
    const { x, solver } = this.ready;
    const { trial, accepting, storing } = solver;
    let moved = 0;
    for (let node = 1; node < this.names.length; node++) {
      moved = Math.max(moved, Math.abs((trial[node] as number) - (x[node] as number)));
    }
    this.moved = moved;
    x.set(trial);
    this.accepted++;
    for (const part of accepting) part.accept(x, h);
    for (const part of storing) part.accept(x, weight);
  }
}
