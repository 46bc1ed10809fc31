import { LinearSystem } from './LinearSystem.ts';
import type { Equations } from './Stamp.ts';

/**
 * Modified nodal analysis as it stands in the books (Ho, Ruehli and Brennan 1975): every branch current is an unknown,
 * the matrix is full. Slow, but it takes sources and coils without any resistance.
 */
export class FullEquations implements Equations {
  private readonly system: LinearSystem;
  private readonly rows: Float64Array;

  constructor(unknowns: number) {
    this.system = new LinearSystem(unknowns - 1);
    this.rows = new Float64Array(unknowns - 1);
  }

  clear(): void {
    this.system.clear();
  }

  conductance(a: number, b: number, siemens: number): void {
    this.entry(a, a, siemens);
    this.entry(b, b, siemens);
    this.entry(a, b, -siemens);
    this.entry(b, a, -siemens);
  }

  branch(branch: number, a: number, b: number, ohms: number): void {
    this.entry(a, branch, 1);
    this.entry(b, branch, -1);
    this.entry(branch, a, 1);
    this.entry(branch, b, -1);
    this.entry(branch, branch, -ohms);
  }

  factor(): boolean {
    return this.system.factor();
  }

  solve(rhs: Float64Array): void {
    const { rows } = this;
    for (let row = 0; row < rows.length; row++) rows[row] = rhs[row + 1] as number;
    this.system.solve(rows);
    rhs[0] = 0;
    rhs.set(rows, 1);
  }

  private entry(row: number, column: number, value: number): void {
    if (row !== 0 && column !== 0) this.system.add(row - 1, column - 1, value);
  }
}
