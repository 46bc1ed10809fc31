/**
 * What a part writes itself into. Unknowns are counted from the reference node, 0, whose equation does not exist.
 * Equations of nodes say "the currents into the parts at this node sum to nothing" (Kirchhoff's current law).
 */
export interface Stamp {
  /** A conductance in siemens between two nodes. */
  conductance(a: number, b: number, siemens: number): void;

  /** A branch whose current is an unknown: v(a) − v(b) − ohms × current = (right-hand side). */
  branch(branch: number, a: number, b: number, ohms: number): void;
}

/** The equations of a network: cleared, written by the parts, factored, then solved for as many right-hand sides as wanted. */
export interface Equations extends Stamp {
  /** False when they have no single answer. */
  factor(): boolean;
  /** Replaces the right-hand side by the solution: node voltages by node (0 for the reference), then branch currents. */
  solve(rhs: Float64Array): void;
}
