import { describe, expect, it } from 'vitest';
import { adviceOf } from '../../src/training/coach/adviceOf.ts';
import { trialsFor } from '../../src/training/evidence/trialsFor.ts';
import type { SittingPhase } from '../../src/training/sitting/SittingView.ts';
import { Hands, made, madeTables, viewOf } from './support.ts';

const CAPSULE = made('capsule', 'unit/capsule');
const WINDING = made('winding', 'unit/winding');
const HOSE = made('hose', 'canister-hose/split');
const CAP = made('cap', 'filler-cap/leaking');
const FOUR = [CAPSULE, WINDING, HOSE, CAP];
const EVEN = [0.25, 0.25, 0.25, 0.25];
const TABLES = madeTables(FOUR, {
  'codes-and-freeze-data': 'nnnn',
  'meter-on-battery': 'nnnn',
  'meter-leads-together': 'nnnn',
  'hand-pump-dead-end': 'nnnn',
  'hold-capped': 'ynnn',
  'coil-ohms': 'nynn',
  'smoke-vessel-alone': 'nnyy',
});

const read = (): Hands => new Hands().test('codes-and-freeze-data');

describe('the order of a good instructor', () => {
  it('codes are read before anything is disturbed', () => {
    expect(adviceOf(viewOf(new Hands(), TABLES, EVEN))).toEqual({
      kind: 'do-test',
      test: 'codes-and-freeze-data',
    });
  });

  it('an untried pump is proven before it judges a hold, then the hold is the test', () => {
    const chances = [0.45, 0, 0.45, 0.1];
    const tables = madeTables(FOUR, { 'hand-pump-dead-end': 'nnnn', 'hold-capped': 'ynnn' });
    const hands = read();
    expect(adviceOf(viewOf(hands, tables, chances))).toEqual({
      kind: 'prove-tool',
      test: 'hand-pump-dead-end',
    });
    hands.test('hand-pump-dead-end');
    expect(adviceOf(viewOf(hands, tables, chances))).toEqual({ kind: 'do-test', test: 'hold-capped' });
  });

  it('a meter on a known source, then the leads tip to tip, then few ohms', () => {
    const chances = [0.5, 0.5, 0, 0];
    const tables = madeTables(FOUR, { 'coil-ohms': 'nynn' });
    const hands = read();
    const advice = [];
    for (let i = 0; i < 3; i++) {
      const now = adviceOf(viewOf(hands, tables, chances));
      advice.push(now);
      if ('test' in now) hands.test(now.test);
    }
    expect(advice).toEqual([
      { kind: 'prove-tool', test: 'meter-on-battery' },
      { kind: 'prove-tool', test: 'meter-leads-together' },
      { kind: 'do-test', test: 'coil-ohms' },
    ]);
  });

  it('volts ask for no tip to tip', () => {
    const tables = madeTables(FOUR, { 'sense-at-plug': 'ynny' });
    const hands = read().test('meter-on-battery');
    expect(adviceOf(viewOf(hands, tables, EVEN))).toEqual({ kind: 'do-test', test: 'sense-at-plug' });
  });

  it('a test that was done is not asked for again, however it was done', () => {
    const hands = read().test(
      'hand-pump-dead-end',
      'hold-capped',
      'meter-on-battery',
      'meter-leads-together',
    );
    const next = adviceOf(viewOf(hands, TABLES, EVEN));
    expect(next).toMatchObject({ kind: 'do-test' });
    expect(next).not.toMatchObject({ test: 'hold-capped' });
  });

  it('a tool that has surprised is tried once more, before anything is done with it', () => {
    const hands = read().test('hand-pump-dead-end', 'hold-capped');
    const view = viewOf(hands, TABLES, EVEN, { 'hand-pump': 0.4 });
    expect(adviceOf(view)).toEqual({ kind: 'prove-tool', test: 'hand-pump-dead-end' });
    hands.test('hand-pump-dead-end');
    expect(adviceOf({ ...view, actions: hands.actions, tick: hands.tick })).not.toMatchObject({
      kind: 'prove-tool',
      test: 'hand-pump-dead-end',
    });
  });

  it('a tool that has all but failed is not worked with until it is replaced, and the new one is proven', () => {
    const tables = madeTables(FOUR, { 'hold-capped': 'ynnn' });
    const proof = { kind: 'prove-tool', test: 'hand-pump-dead-end' };
    const hands = read().test('hand-pump-dead-end', 'hand-pump-dead-end', 'hand-pump-dead-end');
    const advice = () => adviceOf(viewOf(hands, tables, EVEN, { 'hand-pump': 0.9 }));
    expect(advice()).toEqual(proof);
    hands.do({ kind: 'renew', item: 'hand-pump' });
    expect(advice()).toEqual(proof);
    hands.test('hand-pump-dead-end');
    expect(advice()).toEqual({ kind: 'do-test', test: 'hold-capped' });
  });

  it('a new tool is proven anew', () => {
    const tables = madeTables(FOUR, { 'hold-capped': 'ynnn' });
    const hands = read().test('hand-pump-dead-end');
    expect(adviceOf(viewOf(hands, tables, EVEN))).toEqual({ kind: 'do-test', test: 'hold-capped' });
    hands.do({ kind: 'renew', item: 'hand-pump' });
    expect(adviceOf(viewOf(hands, tables, EVEN))).toEqual({ kind: 'prove-tool', test: 'hand-pump-dead-end' });
  });

  it('an item at 95 % with its mode at 80 % is decided, and nothing less', () => {
    expect(adviceOf(viewOf(read(), TABLES, [0.96, 0, 0.02, 0.02]))).toEqual({ kind: 'decide' });
    expect(adviceOf(viewOf(read(), TABLES, [0.7, 0.26, 0.02, 0.02])).kind).not.toBe('decide');
    expect(adviceOf(viewOf(read(), TABLES, [0.94, 0, 0.03, 0.03])).kind).not.toBe('decide');
  });

  it('where no test parts what is left, it says so', () => {
    const tables = madeTables(FOUR, { 'smoke-vessel-alone': 'nnyy' });
    expect(adviceOf(viewOf(read(), tables, [0, 0, 0.5, 0.5]))).toEqual({ kind: 'nothing-left' });
  });

  it.each(['repair', 'closed'] as const satisfies readonly SittingPhase[])(
    'after the verdict the repair is proven: %s',
    (phase) => {
      expect(adviceOf({ ...viewOf(new Hands(), TABLES, EVEN), phase })).toEqual({ kind: 'prove-repair' });
    },
  );
});

describe('what comes and goes', () => {
  const STICKY = made('sticky', 'unit/plunger', {
    chance: 0.3,
    trialOf: 'energised',
    good: [],
    bad: [{ fault: 'stuck', severity: 1 }],
  });
  const tables = madeTables([STICKY, HOSE, CAP], {
    'command-clicks': 'nnnny',
    'smoke-vessel-alone': 'nnynn',
  });
  const likely = [0.6, 0.4, 0];

  it('is tried as often as its chance demands: at 0.3 nine times for 95 in 100', () => {
    // 0.7⁹ = 0.040 and 0.7⁸ = 0.058.
    expect(trialsFor(0.3)).toBe(9);
    expect(trialsFor(0.5)).toBe(5);
    expect(trialsFor(1)).toBe(1);
    const hands = read().test('command-clicks');
    expect(adviceOf(viewOf(hands, tables, likely))).toEqual({
      kind: 'repeat-test',
      test: 'command-clicks',
      done: 3,
      of: 9,
    });
    hands.test('command-clicks', 'command-clicks');
    expect(adviceOf(viewOf(hands, tables, likely)).kind).not.toBe('repeat-test');
  });

  it('is not waited for once it is hardly likely any more', () => {
    const hands = read().test('command-clicks');
    expect(adviceOf(viewOf(hands, tables, [0.01, 0.5, 0.49])).kind).not.toBe('repeat-test');
  });

  it('is not waited for where nobody has tried yet', () => {
    expect(adviceOf(viewOf(read(), tables, likely)).kind).not.toBe('repeat-test');
  });
});
