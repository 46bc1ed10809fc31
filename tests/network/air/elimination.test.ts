import { Matrix, solve } from 'ml-matrix';
import { expect, test } from 'vitest';
import { Random } from '../../../src/base/Random.ts';
import { AirElimination } from '../../../src/sim/network/AirElimination.ts';

/** Links of a random island: a tree, and some cross links besides. */
function randomLinks(random: Random, rows: readonly number[]): [number, number][] {
  const links: [number, number][] = [];
  for (let i = 1; i < rows.length; i++) {
    links.push([rows[i] as number, rows[Math.floor(random.next() * i)] as number]);
  }
  for (let n = 0; n < 3; n++) {
    const a = rows[Math.floor(random.next() * rows.length)] as number;
    const b = rows[Math.floor(random.next() * rows.length)] as number;
    if (a !== b) links.push([a, b]);
  }
  return links;
}

test('elimination in its own order agrees with a dense solver (ml-matrix) on a hundred random islands', () => {
  for (let n = 0; n < 100; n++) {
    const random = Random.of(`island-${n}`, 'elimination');
    const width = 4 + (n % 16);
    const rows = Array.from({ length: width }, (_, row) => row).filter(() => random.next() < 0.8);
    if (rows.length === 0) continue;
    const links = randomLinks(random, rows);
    const a = new Float64Array(width * width);
    const set = (i: number, j: number, by: number): void => {
      a[i * width + j] = (a[i * width + j] as number) + by;
    };
    for (const row of rows) set(row, row, 0.01 + random.next());
    for (const [i, j] of links) {
      // A path's slopes: what it takes from one row it gives to the other.
      const from = 10 * random.next();
      const to = 10 * random.next();
      set(i, i, from);
      set(j, i, -from);
      set(j, j, to);
      set(i, j, -to);
    }
    const b = new Float64Array(width);
    for (const row of rows) b[row] = random.next() - 0.5;
    const dense = new Matrix(rows.map((i) => rows.map((j) => a[i * width + j] as number)));
    const expected = solve(dense, Matrix.columnVector(rows.map((row) => b[row] as number)));
    const elimination = new AirElimination(width, rows, links);
    expect([...elimination.order].sort((x, y) => x - y)).toEqual(rows);
    expect(elimination.factor(a)).toBe(true);
    elimination.solve(a, b);
    rows.forEach((row, k) => {
      expect(Math.abs((b[row] as number) - expected.get(k, 0))).toBeLessThan(
        1e-9 * (1 + Math.abs(expected.get(k, 0))),
      );
    });
  }
});

test('a tree of volumes fills in nothing, and a matrix without a pivot is refused', () => {
  const rows = Array.from({ length: 18 }, (_, row) => row);
  const tree = rows.slice(1).map((row): [number, number] => [row, Math.floor((row - 1) / 3)]);
  expect(new AirElimination(18, rows, tree).pattern.length).toBe(18 + 2 * 17);
  const empty = new AirElimination(2, [0, 1], [[0, 1]]);
  expect(empty.factor(new Float64Array(4))).toBe(false);
});
