import { Matrix, solve } from 'ml-matrix';
import { expect, test } from 'vitest';
import { ownSystems, solveFull, solveSparse } from './ownSystems.ts';

test('sparse elimination, the full matrix and ml-matrix agree on the bench’s own equations within 1e-9', () => {
  for (const system of ownSystems()) {
    const theirs = solve(
      new Matrix(system.matrix.map((row) => [...row])),
      Matrix.columnVector([...system.rhs]),
    );
    const sparse = new Float64Array(system.rhs.length + 1);
    const full = new Float64Array(system.rhs.length);
    solveSparse(system, sparse);
    solveFull(system, full);
    const values = theirs.to1DArray();
    const largest = Math.max(...values.map(Math.abs));
    expect(largest).toBeGreaterThan(0.1);
    values.forEach((value, i) => {
      expect(Math.abs(value - (full[i] as number)) / largest, `${system.name} full ${i}`).toBeLessThan(1e-9);
      expect(
        Math.abs(value - (sparse[i + 1] as number)) / largest,
        `${system.name} sparse ${i}`,
      ).toBeLessThan(1e-9);
    });
  }
});
