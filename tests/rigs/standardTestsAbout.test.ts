import { beforeAll, expect, test } from 'vitest';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { outcomesOn, type Sound, shownOnlyWhenBad, soundOutcomes } from '../support/standardOutcomes.ts';

/**
 * A test lists the items it can say something about; an empty list is the whole truck. Whoever lays out what tests would
 * show on suspects may leave out those of other items: there a test shows what a sound truck shows.
 */

const SOUND_SEEDS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((letter) => `sound-truck-${letter}`);
const LISTED = STANDARD_TESTS.filter(({ about }) => about.length > 0);
const sound = new Map<string, Sound>();

beforeAll(() => {
  for (const one of LISTED) sound.set(one.id, soundOutcomes(one, SOUND_SEEDS));
}, 120_000);

test.each(PUMP_FAULTS.filter(({ weight }) => weight > 0).map(({ id, item }) => ({ id, item })))(
  '$id is not seen by tests of other items',
  ({ id, item }) => {
    const strays = LISTED.filter(({ about }) => !about.includes(item)).flatMap((one) =>
      shownOnlyWhenBad(
        sound.get(one.id) ?? new Map(),
        outcomesOn(one, 'truck', [{ fault: id, severity: 0.5 }]),
      ),
    );
    expect(strays).toEqual([]);
  },
  120_000,
);
