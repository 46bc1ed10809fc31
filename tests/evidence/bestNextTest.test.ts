import { describe, expect, it } from 'vitest';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import { bestNextTest, isProven, worthOfTests } from '../../src/training/evidence/bestNextTest.ts';
import { equivalenceGroups } from '../../src/training/evidence/equivalence.ts';
import { type OutcomeTable, OutcomeTableMaker } from '../../src/training/evidence/OutcomeTable.ts';
import { minutesOfSteps, planOf } from '../../src/training/evidence/par.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import type { Suspect } from '../../src/training/evidence/Suspect.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';
import { TrueBench } from '../../src/training/evidence/TrueBench.ts';
import { ROOM } from './support.ts';

function made(id: string, item: string, mode: string): Suspect {
  const modeGroup = `${item}/${mode}`;
  return {
    id,
    faults: [],
    items: [],
    modes: [],
    item,
    modeGroup,
    weight: 1,
    family: id,
    level: 0,
    faces: null,
  };
}

/** A table of made-up tests: each a row of what the suspects show, y or n. */
function tableOf(tests: Readonly<Record<string, string>>): OutcomeTable {
  const shown = (test: string, value: boolean): Shown => ({
    kind: 'yes-no',
    channel: 'click',
    setUp: test,
    tick: 0,
    value,
  });
  const draws = (test: string, mark: string) => [0, 1].map(() => [shown(test, mark === 'y')]);
  return {
    tests: Object.keys(tests),
    outcomes: Object.entries(tests).map(([test, row]) => [...row].map((mark) => draws(test, mark))),
  };
}

describe('the best next test on a made-up table', () => {
  const all = ['a', 'b', 'c', 'd'].map((id) => made(id, id, 'x'));
  const even = [0.25, 0.25, 0.25, 0.25];

  it('halves before it picks, and counts by the minute', () => {
    const evidence = new TestEvidence(all, tableOf({ pick: 'ynnn', half: 'yynn', same: 'yyyy' }));
    expect(bestNextTest(even, evidence, [1, 1, 1], new Set())?.test).toBe(1);
    expect(bestNextTest(even, evidence, [1, 4, 1], new Set())?.test).toBe(0);
    expect(bestNextTest(even, evidence, [1, 1, 1], new Set([0, 1]))).toBeNull();
  });

  it('a clean half is worth a little less than a bit, since ears miss and mishear', () => {
    const evidence = new TestEvidence(all, tableOf({ half: 'yynn' }));
    const [half] = worthOfTests(even, evidence, [1], new Set());
    expect(half?.bits).toBeLessThan(1);
    expect(half?.bits).toBeGreaterThan(0.6);
  });

  it('what parts two suspects of one mode group is worth nothing', () => {
    const twins = [
      made('a', 'unit', 'x'),
      made('b', 'unit', 'x'),
      made('c', 'unit', 'y'),
      made('d', 'plug', 'z'),
    ];
    const evidence = new TestEvidence(twins, tableOf({ within: 'ynyy', modes: 'yyny', items: 'yyyn' }));
    const [within] = worthOfTests([0.5, 0.5, 0, 0], evidence, [1, 1, 1], new Set());
    expect(within?.bits).toBeCloseTo(0, 12);
    const [, modes] = worthOfTests([0.5, 0, 0.5, 0], evidence, [1, 1, 1], new Set());
    expect(modes?.bits).toBeGreaterThan(0.6);
    const [, , items] = worthOfTests([0.5, 0, 0, 0.5], evidence, [1, 1, 1], new Set());
    expect(items?.bits).toBeCloseTo(modes?.bits ?? 0, 9);
  });

  it('proven means 95 % of one item and 80 % of it in one mode', () => {
    const two = [made('a', 'unit', 'x'), made('b', 'unit', 'y'), made('c', 'plug', 'z')];
    expect(isProven(two, [0.96, 0, 0.04])).toBe(true);
    expect(isProven(two, [0.7, 0.26, 0.04])).toBe(false);
    expect(isProven(two, [0.94, 0, 0.06])).toBe(false);
  });

  it('suspects that no test tells apart are one group', () => {
    const evidence = new TestEvidence(all, tableOf({ one: 'yynn', two: 'ynyy' }));
    expect(equivalenceGroups(evidence)).toEqual([[0], [1], [2, 3]]);
  });
});

const IDS = [
  'coil-ohms',
  'command-clicks',
  'sense-at-plug',
  'hold-capped',
  'meter-leads-together',
  'meter-on-battery',
];
const FEW = [
  'nothing-wrong',
  'winding-open',
  'plunger-stuck',
  'capsule-torn/0.5',
  'sense-open',
  'pull-up-lost',
];

describe('plans on real benches', () => {
  const tests = STANDARD_TESTS.filter(({ id }) => (IDS as readonly StandardTestId[]).includes(id));
  const few = suspects().filter(({ id }) => FEW.includes(id));
  const maker = new OutcomeTableMaker(few, tests, ROOM, 2);
  maker.work(maker.left);
  const evidence = new TestEvidence(few, maker.table);
  const prior = few.map(() => 1 / few.length);
  const minutes = tests.map(() => 2);

  it('there are six suspects and six tests', () => {
    expect(few).toHaveLength(FEW.length);
    expect(tests).toHaveLength(IDS.length);
  });

  it.each([
    ['winding-open', 'unit'],
    ['capsule-torn', 'unit'],
    ['sense-open', 'sense-wire'],
  ])('%s is proven in a few tests, with the meter proven before its first use', (fault, item) => {
    const faults = [{ fault, severity: 0.5 }];
    const plan = planOf(prior, { evidence, tests, minutes }, new TrueBench(faults, 'held-out', ROOM));
    const suspect = few.findIndex((one) => one.id.startsWith(fault));
    expect(plan.proven).toBe(true);
    expect(plan.chances[suspect]).toBeGreaterThan(0.9);
    expect(few[suspect]?.item).toBe(item);
    const done = plan.steps.map(({ test }) => test);
    expect(minutesOfSteps(plan.steps, { evidence, tests, minutes })).toBe(2 * done.length);
    const firstMetered = done.findIndex((id) => id === 'coil-ohms' || id === 'sense-at-plug');
    if (firstMetered >= 0) {
      expect(done.indexOf('meter-on-battery')).toBeLessThan(firstMetered);
      expect(done.indexOf('meter-on-battery')).toBeGreaterThanOrEqual(0);
    }
  });
});
