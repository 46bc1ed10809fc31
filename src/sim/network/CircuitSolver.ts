import { FullEquations } from './FullEquations.ts';
import { NodalEquations } from './NodalEquations.ts';
import { Part } from './Part.ts';
import type { Equations } from './Stamp.ts';
import { StoringPart } from './StoringPart.ts';

/** The node everything is measured against. */
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

/** What is written anew in every solve and copied where it is to stay: shared by all circuits of one size. */
interface Scratch {
  readonly trial: Float64Array;
  readonly spare: Float64Array;
}

const scratches = new Map<number, Scratch>();

function scratchOf(unknowns: number): Scratch {
  const scratch = scratches.get(unknowns) ?? {
    trial: new Float64Array(unknowns),
    spare: new Float64Array(unknowns),
  };
  scratches.set(unknowns, scratch);
  return scratch;
}

/**
 * Solves one implicit stage of a network: its parts write their equations, which are factored and solved, and parts whose
 * characteristic bends change their piece until all pieces fit. Equations are written again only when a value, a piece or
 * the stage's weight has changed.
 */
export class CircuitSolver {
  /** The trial solution of the stage just solved: node voltages by node, then branch currents. */
  readonly trial: Float64Array;
  /** As long, for whoever needs it for a moment. */
  readonly spare: Float64Array;
  /** Parts that store nothing but take a solution as fact. */
  readonly accepting: readonly Part[];
  readonly storing: readonly StoringPart[];
  /** Counts solves. */
  iterations = 0;
  /** Becomes true when a characteristic bends. */
  bent = false;
  private readonly injecting: readonly Part[];
  private readonly piecewise: readonly Part[];
  private readonly nodal: NodalEquations;
  private full: FullEquations | null = null;
  /** The equations that hold the present factors. */
  private equations: Equations;
  private dirty = true;
  /** A storing part's own value has changed between stages. */
  private restamp = false;
  private factoredFor = 0;

  constructor(
    private readonly nodes: number,
    unknowns: number,
    private readonly parts: readonly Part[],
  ) {
    const { trial, spare } = scratchOf(unknowns);
    this.trial = trial;
    this.spare = spare;
    this.storing = parts.filter((part): part is StoringPart => part instanceof StoringPart);
    this.accepting = parts.filter(
      (part) => !(part instanceof StoringPart) && part.accept !== Part.prototype.accept,
    );
    this.injecting = parts.filter((part) => part.injects);
    this.piecewise = parts.filter((part) => part.piecewise);
    this.nodal = new NodalEquations(nodes, LEAK_SIEMENS, parts, unknowns - nodes);
    this.equations = this.nodal;
  }

  /** Says that the equations no longer hold. */
  touch(): void {
    this.dirty = true;
  }

  /** True when a part has changed while the last solution was accepted. */
  get touched(): boolean {
    return this.dirty;
  }

  /**
   * Solves one backward Euler stage of length `weight` into `trial`, with pieces that fit; `share` is how far into the step
   * it lies. False when there is no such solution.
   */
  stage(share: number, weight: number): boolean {
    for (const part of this.storing) if (part.toStage(share)) this.restamp = true;
    for (let round = 1; round <= MOST_ROUNDS; round++) {
      if ((this.dirty || this.restamp || this.factoredFor !== weight) && !this.factor(weight)) return false;
      this.solve(weight);
      this.iterations++;
      if (!this.changeModes(round > FREE_ROUNDS)) return true;
    }
    return false;
  }

  /** Solves the last stage's equations for another right-hand side, in place. */
  solveAgain(rhs: Float64Array): void {
    this.equations.solve(rhs);
  }

  private factor(weight: number): boolean {
    const { nodal } = this;
    if (this.dirty) {
      nodal.clear();
      for (const part of this.parts) if (!(part instanceof StoringPart)) part.stamp(nodal, weight);
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
    this.full ??= new FullEquations(this.trial.length);
    const { full } = this;
    full.clear();
    for (let node = 1; node < this.nodes; node++) full.conductance(node, REFERENCE, LEAK_SIEMENS);
    for (const part of this.parts) part.stamp(full, weight);
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
}
