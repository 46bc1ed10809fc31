import { describe, expect, it } from 'vitest';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { RuleId } from '../../src/training/scenario/ruleIds.ts';
import { bench, type TestBench } from '../support/bench.ts';

/** What no standard test may break as it is written. The other rules ask for more than one test at a time. */
const PROHIBITIONS: readonly RuleId[] = [
  'key-off-for-plug',
  'ohms-on-dead-circuit',
  'back-probed-with-pins',
  'pins-removed',
  'jumper-short-and-fused',
  'air-port-capped',
  'canister-hose-plugged',
  'clamps-hand-tight',
  'bench-restored',
];

/** Works a standard test by the hands of a sitting. */
function worked(id: StandardTestId, on: TestBench = bench().does('accept')): TestBench {
  const test = STANDARD_TESTS.find((one) => one.id === id);
  if (test === undefined) throw new Error(id);
  const { sitting } = on;
  runStandardTest(test, {
    get tick() {
      return sitting.tick;
    },
    apply: (action) => sitting.apply(action),
    advanceTo: (tick) => sitting.advanceTo(tick),
    observe: () => sitting.observe(),
  });
  return on;
}

describe('a standard test, worked as it is written', () => {
  it.each(STANDARD_TESTS.map(({ id }) => id))('breaks no rule and nothing of safety: %s', (id) => {
    const { rules, safety } = worked(id).does('verdict nothing-wrong\nclose').debrief();
    const broken = rules.filter(({ rule, outcome }) => outcome === 'missed' && PROHIBITIONS.includes(rule));
    expect(broken.map(({ rule, ticks }) => `${rule} ${ticks.join(' ')}`)).toEqual([]);
    expect(safety).toEqual([]);
  });

  it('keeps the duty that it is there for', () => {
    const outcomes = (id: StandardTestId, rule: RuleId, before: readonly StandardTestId[] = []) => {
      const on = bench().does('accept');
      for (const test of before) worked(test, on);
      return worked(id, on).rule(rule);
    };
    expect(outcomes('meter-on-battery', 'meter-proven')).toBe('kept');
    expect(outcomes('hold-capped', 'pump-proven', ['hand-pump-dead-end'])).toBe('kept');
    expect(outcomes('command-clicks', 'click-three-times')).toBe('kept');
    expect(outcomes('hold-capped', 'hold-watched')).toBe('kept');
    expect(outcomes('vacuum-and-sense', 'vacuum-three-times')).toBe('kept');
    expect(outcomes('vacuum-and-sense', 'return-observed')).toBe('kept');
    expect(outcomes('feed-drop', 'supply-and-ground-loaded', ['ground-drop'])).toBe('kept');
    expect(outcomes('road-test', 'pending-codes-read')).toBe('missed');
  });
});
