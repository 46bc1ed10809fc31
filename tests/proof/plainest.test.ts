import { expect, test } from 'vitest';
import type { Outcome } from '../../src/sim/rigs/standardTests/Outcome.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { TestReadings } from '../../src/training/proof/FaultReadings.ts';
import { plainestFirst } from '../../src/training/proof/plainest.ts';

const volts = (value: number | null): Outcome => ({
  kind: 'number',
  channel: 'meter',
  setUp: 'a/b',
  tick: 0,
  unit: 'V',
  half: 0.01,
  value,
});

function read(
  test: string,
  good: readonly Outcome[],
  faulted: Outcome,
  others: readonly Outcome[] = [],
): TestReadings {
  const mark = { setUp: `${test}/b`, good, faulted: [faulted], others, telling: 'tells' } as const;
  return { test: test as StandardTestId, marks: [mark], telling: 'tells' };
}

test('the plainest reading comes first: no figure at all, then the farthest off for its doubt', () => {
  const near = read('near', [volts(1)], volts(1.1));
  const far = read('far', [volts(1)], volts(9));
  const open = read('open', [volts(1)], volts(null));
  expect(plainestFirst([near, far, open])).toEqual([open, far, near]);
});

test('what other good benches show counts against it, and what is as plain keeps its place', () => {
  const sharp = read('sharp', [volts(1)], volts(2), [volts(0.99), volts(1.01)]);
  const wide = read('wide', [volts(1)], volts(2), [volts(0.5), volts(1.8)]);
  const alike = read('alike', [volts(1)], volts(2), [volts(0.5), volts(1.8)]);
  expect(plainestFirst([wide, alike, sharp])).toEqual([sharp, wide, alike]);
});
