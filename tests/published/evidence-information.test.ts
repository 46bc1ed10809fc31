import { describe, expect, it } from 'vitest';
import {
  entropy,
  expectedEntropy,
  informationGain,
  outcomesOf,
  probeCost,
} from '../../src/training/evidence/information.ts';
import {
  cheapestOrder,
  expectedCostOfLook,
  expectedCostOfRepair,
} from '../../src/training/evidence/repairOrder.ts';
import { testability } from '../../src/training/evidence/testability.ts';
import {
  cheapestSequence,
  greedySequence,
  type SequencingProblem,
} from '../../src/training/evidence/testSequencing.ts';
import { POLYBOX_DIAGNOSES, polyboxValue } from './support/polybox.ts';

// Source: de Kleer and Williams, "Diagnosing multiple faults" (1987); the run printed with Forbus and de Kleer,
// "Building Problem Solvers" (1993): inputs 3, 2, 2, 3, 3, seen F = 10 where 12 was due.
describe('the polybox', () => {
  const cost = (probe: 'X' | 'Y' | 'Z' | 'G' | 'A' | 'F'): number => {
    const counts = new Map<number, number>();
    for (const broken of POLYBOX_DIAGNOSES) {
      const value = polyboxValue(probe, broken);
      counts.set(value, (counts.get(value) ?? 0) + 1);
    }
    return probeCost([...counts.values()]);
  };

  it('X, Y and G cost 2.0 each', () => {
    expect(cost('X')).toBeCloseTo(2, 9);
    expect(cost('Y')).toBeCloseTo(2, 9);
    expect(cost('G')).toBeCloseTo(2, 9);
  });

  it('all others cost three times log2 of three', () => {
    for (const probe of ['A', 'Z', 'F'] as const) expect(cost(probe)).toBeCloseTo(4.7548876, 6);
  });

  it('expected entropy is that cost over the number of diagnoses', () => {
    const third = [1 / 3, 1 / 3, 1 / 3];
    // X tells the first multiplier from the other two.
    const row = POLYBOX_DIAGNOSES.map((broken) => (polyboxValue('X', broken) === 6 ? 1 : 0));
    expect(expectedEntropy(third, [row, row.map((p) => 1 - p)])).toBeCloseTo(2 / 3, 9);
  });
});

// Worked by hand from Shannon's definition (1948).
describe('entropy and gain', () => {
  const eight = new Array<number>(8).fill(1 / 8);
  const split = (n: number): number[][] => {
    const row = eight.map((_, i) => (i < n ? 1 : 0));
    return [row, row.map((p) => 1 - p)];
  };

  it('eight equal faults are three bits; halving them is worth one, one against seven 0.5436', () => {
    expect(entropy(eight)).toBeCloseTo(3, 12);
    expect(informationGain(eight, split(4))).toBeCloseTo(1, 12);
    expect(informationGain(eight, split(1))).toBeCloseTo(0.5436, 4);
  });

  it('a noisy test on .5, .3, .2', () => {
    const prior = [0.5, 0.3, 0.2];
    const fail = [0.95, 0.05, 0.05];
    const likelihood = [fail, fail.map((p) => 1 - p)];
    const [failed, passed] = outcomesOf(prior, likelihood);
    expect(failed?.chance).toBeCloseTo(0.5, 12);
    expect(entropy(prior)).toBeCloseTo(1.4855, 4);
    expect(entropy(failed?.posterior ?? [])).toBeCloseTo(0.3349, 4);
    expect(entropy(passed?.posterior ?? [])).toBeCloseTo(1.2088, 4);
    expect(informationGain(prior, likelihood)).toBeCloseTo(0.7136, 4);
    for (const [i, p] of [0.95, 0.03, 0.02].entries()) expect(failed?.posterior[i]).toBeCloseTo(p, 12);
    for (const [i, p] of [0.05, 0.57, 0.38].entries()) expect(passed?.posterior[i]).toBeCloseTo(p, 12);
  });

  it('over groups, what only parts members of one group is worth nothing', () => {
    const row = [1, 0, 0];
    expect(informationGain([0.4, 0.4, 0.2], [row, row.map((p) => 1 - p)], [0, 0, 1])).toBeLessThan(
      informationGain([0.4, 0.4, 0.2], [row, row.map((p) => 1 - p)]),
    );
    expect(informationGain([0.5, 0.5, 0], [row, row.map((p) => 1 - p)], [0, 0, 1])).toBeCloseTo(0, 12);
  });
});

// Source: Pattipati and Alexandridis (1990); the matrix is from memory, its published optimum of 2.18 comes out of it.
const SIX_STATES: SequencingProblem = {
  priors: [0.7, 0.01, 0.02, 0.1, 0.05, 0.12],
  costs: [1, 1, 1, 1, 1],
  fails: [0, 1, 2, 3, 4].map((test) =>
    ['00000', '01001', '00110', '10011', '11000', '11110'].map((row) => row[test] === '1'),
  ),
};

describe('test sequencing', () => {
  it('the best sequence costs 2.18 and begins with the second test', () => {
    const plan = cheapestSequence(SIX_STATES);
    expect(plan.cost).toBeCloseTo(2.18, 9);
    expect(plan.first).toBe(1);
  });

  it('the greedy one costs 2.86 and begins with the first', () => {
    const plan = greedySequence(SIX_STATES);
    expect(plan.cost).toBeCloseTo(2.86, 9);
    expect(plan.first).toBe(0);
  });

  it('gains at the root', () => {
    expect(entropy(SIX_STATES.priors)).toBeCloseTo(1.4549, 4);
    for (const [test, gain] of [0.8415, 0.6801, 0.5842, 0.795, 0.4999].entries()) {
      const row = (SIX_STATES.fails[test] ?? []).map((fail) => (fail ? 1 : 0));
      expect(informationGain(SIX_STATES.priors, [row, row.map((p) => 1 - p)])).toBeCloseTo(gain, 4);
    }
  });
});

// Source: the rule of Heckerman, Breese and Rommelse (1995); the numbers are worked over all six orders by hand.
describe('repairs in order', () => {
  const a = { p: 0.2, cost: 2 };
  const b = { p: 0.5, cost: 8 };
  const c = { p: 0.3, cost: 1 };

  it('by chance over cost, 6.4; likeliest first, 9.3', () => {
    expect(cheapestOrder([a, b, c])).toEqual([c, a, b]);
    expect(expectedCostOfRepair(cheapestOrder([a, b, c]))).toBeCloseTo(6.4, 12);
    expect(expectedCostOfRepair([b, a, c])).toBeCloseTo(9.3, 12);
  });

  it('no other order is cheaper', () => {
    const orders = [
      [a, b, c],
      [a, c, b],
      [b, a, c],
      [b, c, a],
      [c, a, b],
      [c, b, a],
    ];
    const costs = orders.map(expectedCostOfRepair).sort((x, y) => x - y);
    for (const [i, cost] of [6.4, 6.8, 7, 8.7, 8.9, 9.3].entries()) expect(costs[i]).toBeCloseTo(cost, 9);
  });

  it('a perfect look at b for 0.5 brings it to 5.4', () => {
    const cost = expectedCostOfLook(0.5, [
      { chance: 0.5, repairs: [{ p: 1, cost: 8 }] },
      {
        chance: 0.5,
        repairs: [
          { p: 0.4, cost: 2 },
          { p: 0.6, cost: 1 },
        ],
      },
    ]);
    expect(cost).toBeCloseTo(5.4, 12);
  });
});

// Source: IEEE 1522-2004 (formulas from memory), on the matrix above without its third and fourth test.
describe('testability', () => {
  const rows = ['000', '011', '000', '101', '110', '110'].map((row) => [...row].map((c) => c === '1'));
  const figures = testability(rows.slice(1), SIX_STATES.priors.slice(1));

  it('detects .9333 of the weight and isolates .3929 of it to one', () => {
    expect(figures.detected).toBeCloseTo(0.28 / 0.3, 9);
    expect(figures.isolatedTo(1)).toBeCloseTo(0.11 / 0.28, 9);
    expect(figures.isolatedTo(2)).toBe(1);
    expect(figures.meanGroup).toBeCloseTo(1.6071, 4);
  });

  it('s4 and s5 cannot be told apart', () => {
    expect(figures.groups).toContainEqual([3, 4]);
  });
});
