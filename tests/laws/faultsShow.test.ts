import { beforeAll, describe, expect, test } from 'vitest';
import { TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { outcomesOn, type Sound, shownOnlyWhenBad, soundOutcomes } from '../support/standardOutcomes.ts';

/**
 * Nothing in the catalogue is there for its name only: every fault that a job may begin with makes a standard test show
 * what no sound truck shows, by more than tolerance and the instruments' accuracy. The tests are worked by actions alone.
 * `--reporter=verbose` prints the matrix of faults and tests.
 */

const BEGIN_WITH = PUMP_FAULTS.filter(({ weight }) => weight > 0);
const SOUND_SEEDS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((letter) => `sound-truck-${letter}`);
const sound = new Map<string, Sound>();
/** Ids of the tests that showed each fault. */
const matrix = new Map<string, readonly string[]>();

beforeAll(() => {
  for (const one of STANDARD_TESTS) sound.set(one.id, soundOutcomes(one, SOUND_SEEDS));
});

const shows = (id: string): Sound => sound.get(id) ?? new Map();

test.each(BEGIN_WITH.map(({ id, item }) => ({ id, item })))(
  '$id shows in a standard test about its item',
  ({ id, item }) => {
    const about = STANDARD_TESTS.filter((one) => one.about.length === 0 || one.about.includes(item));
    const shownBy = about.filter(
      (one) =>
        shownOnlyWhenBad(shows(one.id), outcomesOn(one, 'truck', [{ fault: id, severity: 0.5 }])).length > 0,
    );
    matrix.set(
      id,
      shownBy.map((one) => one.id),
    );
    expect(shownBy).not.toEqual([]);
  },
  120_000,
);

test('the matrix is whole, and no test is there for nothing', ({ annotate }) => {
  void annotate([...matrix].map(([fault, tests]) => `${fault}: ${tests.join(' ')}`).join('\n'));
  expect(matrix.size).toBe(BEGIN_WITH.length);
  const used = new Set([...matrix.values()].flat());
  const idle = STANDARD_TESTS.filter(({ id }) => !used.has(id)).map(({ id }) => id);
  expect(idle).toEqual([]);
});

test('every tool that can be bad from the beginning is found out by a proof of that tool', () => {
  const proofs = ['meter-on-battery', 'meter-current-fuse', 'hand-pump-dead-end', 'jumper-proof'];
  for (const { id, item } of BEGIN_WITH) {
    if (!TOOL_ITEMS.includes(item)) continue;
    expect(
      matrix.get(id)?.filter((by) => proofs.includes(by)),
      id,
    ).not.toEqual([]);
  }
});

describe('what counts as shown is wider than the tolerances of a sound truck', () => {
  test.each(['truck-a', 'truck-b', 'truck-c', 'truck-d'])(
    '%s',
    (seed) => {
      const alarms = STANDARD_TESTS.flatMap((one) => shownOnlyWhenBad(shows(one.id), outcomesOn(one, seed)));
      expect(alarms).toEqual([]);
    },
    120_000,
  );
});
