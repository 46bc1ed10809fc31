import type { LinearSystem } from './LinearSystem.ts';

/**
 * Writes parts into the matrix by unknown: unknown 0 is the reference node, whose row and column do not exist.
 * Rows of nodes say "the currents into the parts at this node sum to nothing" (Kirchhoff's current law).
 */
export class Stamp {
  constructor(private readonly system: LinearSystem) {}

  entry(row: number, column: number, value: number): void {
    if (row !== 0 && column !== 0) this.system.add(row - 1, column - 1, value);
  }

  /** A conductance in siemens between two nodes. */
  conductance(a: number, b: number, siemens: number): void {
    this.entry(a, a, siemens);
    this.entry(b, b, siemens);
    this.entry(a, b, -siemens);
    this.entry(b, a, -siemens);
  }

  /** A branch whose current is an unknown: v(a) − v(b) − ohms × current = (right-hand side). */
  branch(branch: number, a: number, b: number, ohms: number): void {
    this.entry(a, branch, 1);
    this.entry(b, branch, -1);
    this.entry(branch, a, 1);
    this.entry(branch, b, -1);
    this.entry(branch, branch, -ohms);
  }
}
