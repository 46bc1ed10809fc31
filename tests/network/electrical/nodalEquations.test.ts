import { describe, expect, test } from 'vitest';
import { FullEquations } from '../../../src/sim/network/FullEquations.ts';
import { NodalEquations } from '../../../src/sim/network/NodalEquations.ts';
import type { Equations } from '../../../src/sim/network/Stamp.ts';

const LEAK = 1e-12;
const SOURCE = 3;
const UNKNOWNS = 4;
/** 12 V behind 1 GΩ on node 1, which a good contact joins to node 2. Both nodes leak. */
const JOINS = [
  { a: 1, b: 0 },
  { a: 1, b: 2 },
];

function write(equations: Equations): void {
  equations.branch(SOURCE, 1, 0, 1e9);
  equations.conductance(1, 2, 2000);
}

function solved(equations: Equations): Float64Array {
  expect(equations.factor()).toBe(true);
  const x = new Float64Array(UNKNOWNS);
  x[SOURCE] = 12;
  equations.solve(x);
  return x;
}

function nodal(joins = JOINS): NodalEquations {
  const equations = new NodalEquations(3, LEAK, joins, 1);
  equations.clear();
  return equations;
}

/** Closed form: v = E g / (g + 2 leaks), with 1 nS against two of 1 pS. The contact's own drop is below 1e-15 V. */
const VOLTS = (12 * 1e-9) / (1e-9 + 2 * LEAK);

describe('nodal equations', () => {
  test('keep all digits of 1e-12 S beside 2000 S, where the full matrix keeps six', () => {
    const equations = nodal();
    write(equations);
    const x = solved(equations);
    expect(Math.abs((x[1] as number) / VOLTS - 1)).toBeLessThan(1e-14);
    expect(Math.abs((x[2] as number) / VOLTS - 1)).toBeLessThan(1e-14);
    // The branch's current flows out of the source: minus what leaks.
    expect(Math.abs((x[SOURCE] as number) / (-2 * LEAK * VOLTS) - 1)).toBeLessThan(1e-11);
    const full = new FullEquations(UNKNOWNS);
    for (const node of [1, 2]) full.conductance(node, 0, LEAK);
    write(full);
    const rough = Math.abs((solved(full)[1] as number) / VOLTS - 1);
    expect(rough).toBeLessThan(1e-3);
    expect(rough).toBeGreaterThan(1e-14);
  });

  test('begin again from what was kept, with the same digits', () => {
    const equations = nodal();
    equations.branch(SOURCE, 1, 0, 1e9);
    equations.keep();
    equations.conductance(1, 2, 2000);
    const first = [...solved(equations)];
    equations.reclaim();
    equations.conductance(1, 2, 1);
    expect([...solved(equations)]).not.toEqual(first);
    equations.reclaim();
    equations.conductance(1, 2, 2000);
    expect([...solved(equations)]).toEqual(first);
  });

  test('follow a part that has moved to another node', () => {
    const joins = [
      { a: 1, b: 0 },
      { a: 1, b: 2 },
    ].map((join) => ({ ...join }));
    const equations = nodal(joins);
    (joins[1] as { a: number; b: number }).b = 0;
    equations.clear();
    equations.branch(SOURCE, 1, 0, 1);
    equations.conductance(1, 0, 1);
    expect(solved(equations)[1]).toBeCloseTo(6, 9);
  });

  test('refuse a branch without resistance, also when it was written before they began again', () => {
    const equations = nodal();
    equations.branch(SOURCE, 1, 0, 0);
    equations.keep();
    expect(equations.factor()).toBe(false);
    equations.reclaim();
    expect(equations.factor()).toBe(false);
  });
});
