import { numberRows } from '../../base/numberRows.ts';
import { type EliminationPlan, eliminationPlan } from './eliminationPlan.ts';
import type { Equations } from './Stamp.ts';

/** Below this a branch's resistance is too small to be taken for a conductance: currents would lose their digits. */
const LEAST_BRANCH_OHMS = 1e-5;

/** What the equations need to know of a part: where it sits. */
export interface Joins {
  readonly a: number;
  readonly b: number;
}

/**
 * Equations of a network in which every branch has some resistance: branches become conductances (Norton), and nodes are
 * eliminated one at a time by the star–mesh transform: a node k with conductances gₖᵢ to its neighbours and gₖ₀ to the
 * reference is replaced by conductances gₖᵢ gₖⱼ / Σg between each two of them. That is Gaussian elimination of a
 * symmetric diagonally dominant matrix without a single subtraction (after Grassmann, Taksar and Heyman 1985), so
 * 1e-12 S beside 2000 S keeps all its digits, no pivot need be searched, and only pairs that are joined cost anything.
 */
export class NodalEquations implements Equations {
  private readonly terminals: Int16Array;
  private plan: EliminationPlan;
  /** By slot: conductances, and after `factor` their shares of their node's sum. */
  private work: Float64Array;
  /** By slot: conductances of everything that does not depend on the step's length. */
  private kept: Float64Array;
  /** By node: 1 / (sum of its conductances when it was eliminated). */
  private readonly inverse: Float64Array;
  private readonly branchAt: Int16Array;
  private readonly branchSiemens: Float64Array;
  private branches = 0;
  private keptBranches = 0;
  private soundBranches = true;
  private keptSound = true;

  constructor(
    private readonly nodes: number,
    private readonly leakSiemens: number,
    private readonly parts: readonly Joins[],
    branches: number,
  ) {
    this.terminals = new Int16Array(2 * parts.length).fill(-1);
    this.branchAt = new Int16Array(3 * branches);
    const { inverse, siemens } = numberRows({ inverse: nodes, siemens: branches });
    this.inverse = inverse;
    this.branchSiemens = siemens;
    this.plan = { nodes: 0, slots: 0, slotOf: EMPTY, program: EMPTY, starts: EMPTY };
    this.work = new Float64Array(0);
    this.kept = this.work;
  }

  /** Begins anew: parts are where they are now, and only the leaks are written. */
  clear(): void {
    if (this.hasMoved()) this.layOut();
    this.work.fill(0);
    this.work.fill(this.leakSiemens, 1, this.nodes);
    this.branches = 0;
    this.soundBranches = true;
  }

  /** Remembers what has been written so far, to begin from there again by `reclaim`. */
  keep(): void {
    this.kept.set(this.work);
    this.keptBranches = this.branches;
    this.keptSound = this.soundBranches;
  }

  reclaim(): void {
    this.work.set(this.kept);
    this.branches = this.keptBranches;
    this.soundBranches = this.keptSound;
  }

  conductance(a: number, b: number, siemens: number): void {
    const slot = this.plan.slotOf[a * this.nodes + b] as number;
    this.work[slot] = (this.work[slot] as number) + siemens;
  }

  branch(branch: number, a: number, b: number, ohms: number): void {
    if (!(ohms >= LEAST_BRANCH_OHMS)) {
      this.soundBranches = false;
      return;
    }
    const siemens = 1 / ohms;
    this.conductance(a, b, siemens);
    const at = 3 * this.branches;
    this.branchAt[at] = branch;
    this.branchAt[at + 1] = a;
    this.branchAt[at + 2] = b;
    this.branchSiemens[this.branches++] = siemens;
  }

  /** False when a branch has next to no resistance: these equations are then not the ones to use. */
  factor(): boolean {
    if (!this.soundBranches) return false;
    const { work, inverse } = this;
    const { program, starts } = this.plan;
    for (let turn = 0, at = 0; turn < starts.length; turn++) {
      const node = program[at] as number;
      const count = program[at + 1] as number;
      const pairs = at + 2 + count;
      const end = pairs + count;
      const toReference = work[node] as number;
      let sum = toReference;
      for (let i = pairs; i < end; i++) sum += work[program[i] as number] as number;
      if (!(sum > 0 && sum < Number.POSITIVE_INFINITY)) return false;
      const one = 1 / sum;
      inverse[node] = one;
      at = end;
      for (let i = pairs; i < end; i++) {
        const slot = program[i] as number;
        const share = (work[slot] as number) * one;
        const neighbour = program[i - count] as number;
        work[neighbour] = (work[neighbour] as number) + share * toReference;
        for (let j = i + 1; j < end; j++, at++) {
          const between = program[at] as number;
          work[between] = (work[between] as number) + share * (work[program[j] as number] as number);
        }
        work[slot] = share;
      }
    }
    return true;
  }

  solve(rhs: Float64Array): void {
    this.branchesToNodes(rhs);
    this.eliminate(rhs);
    this.substitute(rhs);
    rhs[0] = 0;
    this.branchCurrents(rhs);
  }

  /** A branch's source as a current at its ends. */
  private branchesToNodes(rhs: Float64Array): void {
    const { branchAt, branchSiemens } = this;
    for (let i = 0, at = 0; i < this.branches; i++, at += 3) {
      const amps = (rhs[branchAt[at] as number] as number) * (branchSiemens[i] as number);
      const a = branchAt[at + 1] as number;
      const b = branchAt[at + 2] as number;
      rhs[a] = (rhs[a] as number) + amps;
      rhs[b] = (rhs[b] as number) - amps;
    }
  }

  /** A node's current goes to its neighbours by their shares. */
  private eliminate(rhs: Float64Array): void {
    const { work } = this;
    const { program, starts } = this.plan;
    for (let turn = 0; turn < starts.length; turn++) {
      const at = starts[turn] as number;
      const amps = rhs[program[at] as number] as number;
      if (amps === 0) continue;
      const count = program[at + 1] as number;
      const pairs = at + 2 + count;
      for (let i = at + 2; i < pairs; i++) {
        const neighbour = program[i] as number;
        rhs[neighbour] = (rhs[neighbour] as number) + (work[program[i + count] as number] as number) * amps;
      }
    }
  }

  /** A node's voltage is its neighbours' by their shares and what its own current adds. */
  private substitute(rhs: Float64Array): void {
    const { work, inverse } = this;
    const { program, starts } = this.plan;
    for (let turn = starts.length - 1; turn >= 0; turn--) {
      const at = starts[turn] as number;
      const node = program[at] as number;
      const count = program[at + 1] as number;
      const pairs = at + 2 + count;
      let volts = (rhs[node] as number) * (inverse[node] as number);
      for (let i = at + 2; i < pairs; i++) {
        volts += (work[program[i + count] as number] as number) * (rhs[program[i] as number] as number);
      }
      rhs[node] = volts;
    }
  }

  private branchCurrents(x: Float64Array): void {
    const { branchAt, branchSiemens } = this;
    for (let i = 0, at = 0; i < this.branches; i++, at += 3) {
      const branch = branchAt[at] as number;
      const volts = (x[branchAt[at + 1] as number] as number) - (x[branchAt[at + 2] as number] as number);
      x[branch] = (volts - (x[branch] as number)) * (branchSiemens[i] as number);
    }
  }

  private hasMoved(): boolean {
    const { parts, terminals } = this;
    for (let i = 0; i < parts.length; i++) {
      const part = parts[i] as Joins;
      if (terminals[2 * i] !== part.a || terminals[2 * i + 1] !== part.b) return true;
    }
    return false;
  }

  private layOut(): void {
    const { parts, terminals } = this;
    for (let i = 0; i < parts.length; i++) {
      const part = parts[i] as Joins;
      terminals[2 * i] = part.a;
      terminals[2 * i + 1] = part.b;
    }
    this.plan = eliminationPlan(this.nodes, terminals);
    const { work, kept } = numberRows({ work: this.plan.slots, kept: this.plan.slots });
    this.work = work;
    this.kept = kept;
  }
}

const EMPTY = new Int16Array(0);
