import { describe, expect, it } from 'vitest';
import type { ItemId } from '../../src/sim/devices/items.ts';
import type { StandardTest } from '../../src/sim/rigs/standardTests/StandardTest.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import { bestDirectTest, isDirect } from '../../src/training/evidence/directProof.ts';
import { itemGroups } from '../../src/training/evidence/equivalence.ts';
import { OutcomeTableMaker } from '../../src/training/evidence/OutcomeTable.ts';
import { type PlanBench, planOf } from '../../src/training/evidence/par.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import { suspects } from '../../src/training/evidence/suspects.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';
import { TrueBench } from '../../src/training/evidence/TrueBench.ts';
import { proofsFor } from '../../src/training/evidence/toolProofs.ts';
import { click, faultOf, madeUp, tableOfClicks } from './madeUp.ts';
import { ROOM } from './support.ts';

const test = (id: StandardTestId): StandardTest =>
  STANDARD_TESTS.find((one) => one.id === id) as StandardTest;

describe('direct proof', () => {
  const all = ['a', 'b', 'c'].map((id) => madeUp(id, id));
  // One test clears b, the other clears c: together they leave a without a rival, and neither is about a.
  const evidence = new TestEvidence(all, tableOfClicks({ notB: 'yny', notC: 'yyn', onA: 'nyy' }));
  const runs = new Map<number, readonly Shown[]>([
    [0, [click('notB', true)]],
    [1, [click('notC', true)]],
  ]);
  const chances = evidence.after([0.8, 0.1, 0.1], runs);

  it('elimination is none', () => {
    expect(chances[0]).toBeGreaterThan(0.95);
    expect(isDirect(evidence, chances, 'a', runs)).toBe(false);
    const next = bestDirectTest(evidence, chances, 'a', [1, 1, 1], new Set(runs.keys()));
    expect(next?.test).toBe(2);
    expect(isDirect(evidence, chances, 'a', new Map([...runs, [2, [click('onA', false)]]]))).toBe(true);
  });

  it('where no test is about the item, none is asked for', () => {
    const without = new TestEvidence(all, tableOfClicks({ notB: 'yny', notC: 'yyn' }));
    expect(bestDirectTest(without, chances, 'a', [1, 1], new Set())).toBeNull();
  });
});

describe('groups of items', () => {
  const evidence = (rows: Readonly<Record<string, string>>) =>
    new TestEvidence(
      [
        madeUp('a-mild', 'a', 'x', { weight: 1 }),
        madeUp('a-bad', 'a', 'y', { weight: 3 }),
        madeUp('b', 'b'),
        madeUp('c', 'c'),
      ],
      tableOfClicks(rows),
    );

  it('one odd degree merges nothing', () => {
    // Only the quarter of a that hardly shows looks like b. But all of b looks like that.
    expect(itemGroups(evidence({ one: 'ynyn', two: 'yyyn' }))).toEqual({ b: ['b', 'a'] });
  });

  it('what most of an item looks like belongs to its group', () => {
    expect(itemGroups(evidence({ one: 'nyyn', two: 'yyyn' }))).toEqual({ a: ['a', 'b'], b: ['b', 'a'] });
  });

  it('items that tests tell apart stand alone', () => {
    expect(itemGroups(evidence({ one: 'nnyy', two: 'yyyn' }))).toEqual({});
  });
});

/** A bench that answers by what it is told to show, and counts. */
class ToldBench implements PlanBench {
  readonly done: string[] = [];
  constructor(private readonly answer: (id: string, run: number) => boolean) {}
  show({ id }: StandardTest): readonly Shown[] {
    const run = this.done.filter((one) => one === id).length;
    this.done.push(id);
    return [click(id, this.answer(id, run))];
  }
  renew(_tool: ItemId): boolean {
    return false;
  }
}

describe('a plan', () => {
  const sound = madeUp('nothing-wrong', 'nothing-wrong', 'x', { faults: [] });
  const sticky = madeUp('sticky', 'unit', 'x', {
    faces: { chance: 0.3, trialOf: 'energised', good: [], bad: [faultOf('always-sticks')] },
  });
  // Two tests without tools, so that nothing has to be proven first.
  const tests = [test('command-clicks'), test('look-plug')];
  const tables = {
    tests,
    minutes: [3, 3],
    evidence: new TestEvidence(
      [sound, sticky],
      tableOfClicks({ 'command-clicks': 'yyn', 'look-plug': 'yyy' }),
    ),
  };

  it('repeats a quiet test until what comes and goes is out of play, and no more', () => {
    const bench = new ToldBench(() => true);
    const plan = planOf([0.5, 0.5], tables, bench);
    expect(plan.proven).toBe(true);
    expect(plan.chances[0]).toBeGreaterThan(0.95);
    expect(new Set(bench.done)).toEqual(new Set(['command-clicks']));
    expect(bench.done).toHaveLength(9);
    expect(plan.steps.map(({ again }) => again)).toEqual([false, ...Array(8).fill(true)]);
  });

  it('finds what shows only at the fifth trial', () => {
    const bench = new ToldBench((_, run) => run !== 4);
    const plan = planOf([0.1, 0.9], tables, bench);
    expect(bench.done.length).toBeGreaterThanOrEqual(5);
    expect(plan.chances[1]).toBeGreaterThan(0.9);
  });

  it('says so when the tests run out', () => {
    const blind = {
      ...tables,
      evidence: new TestEvidence(
        [sound, madeUp('b', 'b')],
        tableOfClicks({ 'command-clicks': 'yy', 'look-plug': 'yy' }),
      ),
    };
    const plan = planOf([0.5, 0.5], blind, new ToldBench(() => true));
    expect(plan.proven).toBe(false);
    expect(plan.steps).toEqual([]);
  });

  it('does not use what it may not', () => {
    const plan = planOf([0.5, 0.5], tables, new ToldBench(() => true), new Set(['command-clicks'] as const));
    expect(plan.steps).toEqual([]);
  });
});

describe('tools', () => {
  it('every test rests on the proofs of the tools that it takes, and a proof not on itself', () => {
    expect(proofsFor(test('coil-ohms'))).toEqual(['meter-on-battery', 'meter-leads-together']);
    expect(proofsFor(test('hold-capped'))).toEqual(['hand-pump-dead-end']);
    expect(proofsFor(test('sense-current'))).toContain('meter-current-fuse');
    expect(proofsFor(test('jumper-proof'))).toEqual([]);
    expect(proofsFor(test('meter-on-battery'))).toEqual([]);
  });

  const FEW = ['nothing-wrong', 'capsule-torn/0.5', 'body-cracked/0.5', 'winding-open'];
  const few = suspects().filter(({ id }) => FEW.includes(id));
  const tests = ['hand-pump-dead-end', 'hold-capped'].map((id) => test(id as StandardTestId));
  const maker = new OutcomeTableMaker(few, tests, ROOM, 2);
  maker.work(maker.left);
  const tables = { tests, minutes: [3, 7], evidence: new TestEvidence(few, maker.table) };
  const prior = [0.4, 0.3, 0.2, 0.1];

  it('a pump that does not hold is replaced and proven again before it judges a unit', () => {
    const bench = new TrueBench([{ fault: 'hand-pump-seal-leaking', severity: 0.5 }], 'held-out', ROOM);
    const plan = planOf(prior, tables, bench);
    expect(plan.toolsRenewed).toEqual(['hand-pump']);
    expect(plan.steps.map((step) => step.test)).toEqual([
      'hand-pump-dead-end',
      'hand-pump-dead-end',
      'hold-capped',
    ]);
    const torn = few.findIndex(({ id }) => id.startsWith('capsule-torn'));
    expect(plan.chances[torn]).toBeLessThan(0.05);
  });

  it('a good pump is proven once, whatever is wrong with the truck', () => {
    for (const fault of ['capsule-torn', 'winding-open']) {
      const plan = planOf(prior, tables, new TrueBench([{ fault, severity: 0.5 }], 'held-out', ROOM));
      expect(plan.toolsRenewed).toEqual([]);
      expect(plan.steps.filter((step) => step.test === 'hand-pump-dead-end')).toHaveLength(1);
    }
  });
});
