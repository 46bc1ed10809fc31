import { Matrix, solve } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { Random } from '../../../src/base/Random.ts';
import { LinearSystem } from '../../../src/sim/network/LinearSystem.ts';

/** A random system; the second kind looks like a circuit's: sparse, conductances from 1e-9 to 1e2. */
function randomSystem(
  random: Random,
  size: number,
  kind: 'full' | 'circuit',
): { a: number[][]; b: number[] } {
  const a = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (let r = 0; r < size; r++) {
    const row = a[r] as number[];
    for (let c = 0; c < size; c++) {
      if (kind === 'full') row[c] = random.symmetric();
      else if (c < r && random.next() < 0.2) {
        const decades = Math.floor(random.next() * 12) - 9;
        const g = (1 + random.next()) * 10 ** decades;
        const other = a[c] as number[];
        row[c] = -g;
        other[r] = -g;
        row[r] = (row[r] as number) + g;
        other[c] = (other[c] as number) + g;
      }
    }
  }
  if (kind === 'circuit')
    for (let r = 0; r < size; r++) (a[r] as number[])[r] = ((a[r] as number[])[r] as number) + 1e-3;
  return { a, b: Array.from({ length: size }, () => random.symmetric()) };
}

function fill(system: LinearSystem, a: number[][]): void {
  for (const [r, row] of a.entries()) for (const [c, value] of row.entries()) system.add(r, c, value);
}

function solveOurs(a: number[][], b: number[]): Float64Array {
  const system = new LinearSystem(b.length);
  fill(system, a);
  expect(system.factor()).toBe(true);
  const x = Float64Array.from(b);
  system.solve(x);
  return x;
}

describe('LinearSystem', () => {
  for (const kind of ['full', 'circuit'] as const) {
    test(`agrees with ml-matrix on random ${kind} systems within 1e-8 of the largest unknown`, () => {
      const random = Random.of('linear-systems', kind);
      let worst = 0;
      for (let trial = 0; trial < 60; trial++) {
        const { a, b } = randomSystem(random, 1 + (trial % 40), kind);
        const ours = solveOurs(a, b);
        const theirs = solve(new Matrix(a), Matrix.columnVector(b)).getColumn(0);
        const scale = Math.max(...theirs.map(Math.abs));
        theirs.forEach((value, i) => {
          worst = Math.max(worst, Math.abs(value - (ours[i] as number)) / scale);
        });
      }
      console.info(`worst difference from ml-matrix, ${kind}: ${worst.toExponential(2)}`);
      expect(worst).toBeLessThan(1e-8);
    });
  }

  test('needs its pivoting: a zero on the diagonal is solved', () => {
    expect([
      ...solveOurs(
        [
          [0, 2],
          [4, 1],
        ],
        [6, 11],
      ),
    ]).toEqual([2, 3]);
  });

  test('one factoring serves many right-hand sides with the same digits', () => {
    const { a, b } = randomSystem(Random.of('linear-systems', 'reuse'), 12, 'full');
    const system = new LinearSystem(12);
    fill(system, a);
    system.factor();
    const first = Float64Array.from(b);
    const other = Float64Array.from(b, (v) => v * 3 + 1);
    const again = Float64Array.from(b);
    for (const x of [first, other, again]) system.solve(x);
    expect([...again]).toEqual([...first]);
    expect([...other]).not.toEqual([...first]);
  });

  test('says so when the equations have no single answer', () => {
    const system = new LinearSystem(2);
    for (const [r, c, v] of [
      [0, 0, 1],
      [0, 1, 2],
      [1, 0, 2],
      [1, 1, 4],
    ] as const)
      system.add(r, c, v);
    expect(system.factor()).toBe(false);
  });
});
