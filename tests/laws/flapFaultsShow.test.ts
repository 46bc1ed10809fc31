import { beforeAll, expect, test } from 'vitest';
import { FLAP_ACTUATOR } from '../../src/sim/rigs/flapActuator/flapActuator.ts';
import { outcomesOn, type Sound, shownOnlyWhenBad, soundOutcomes } from '../support/standardOutcomes.ts';

/** What `faultsShow` asks of the leak detection pump, of the flap actuator: every fault in a test about its item, and in no other. */

const { id: RIG, tests: TESTS, faults: FAULTS } = FLAP_ACTUATOR;
const BEGIN_WITH = FAULTS.filter(({ weight }) => weight > 0);
const SOUND_SEEDS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'].map((letter) => `sound-truck-${letter}`);
const sound = new Map<string, Sound>();
const matrix = new Map<string, readonly string[]>();

beforeAll(() => {
  for (const one of TESTS) sound.set(one.id, soundOutcomes(one, SOUND_SEEDS, [], RIG));
});

const shows = (id: string): Sound => sound.get(id) ?? new Map();

test.each(BEGIN_WITH.map(({ id, item }) => ({ id, item })))(
  '$id shows in a standard test about its item, and in none of other items',
  ({ id, item }) => {
    const shownBy = TESTS.filter(
      (one) =>
        shownOnlyWhenBad(shows(one.id), outcomesOn(one, 'truck', [{ fault: id, severity: 0.5 }], RIG))
          .length > 0,
    );
    const about = shownBy.filter((one) => one.about.length === 0 || one.about.includes(item));
    matrix.set(
      id,
      about.map((one) => one.id),
    );
    expect(about).not.toEqual([]);
    expect(shownBy.filter((one) => !about.includes(one)).map((one) => one.id)).toEqual([]);
  },
  120_000,
);

test('no test is there for nothing', ({ annotate }) => {
  void annotate([...matrix].map(([fault, tests]) => `${fault}: ${tests.join(' ')}`).join('\n'));
  const used = new Set([...matrix.values()].flat());
  expect(TESTS.filter(({ id }) => !used.has(id)).map(({ id }) => id)).toEqual([]);
});

test.each(['truck-a', 'truck-b', 'truck-c', 'truck-d'])(
  'what counts as shown is wider than the tolerances of a sound truck: %s',
  (seed) => {
    const alarms = TESTS.flatMap((one) => shownOnlyWhenBad(shows(one.id), outcomesOn(one, seed, [], RIG)));
    expect(alarms).toEqual([]);
  },
  120_000,
);
