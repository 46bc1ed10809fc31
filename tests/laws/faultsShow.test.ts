import { beforeAll, describe, expect, test } from 'vitest';
import { FAULTS } from '../../src/sim/faults/catalogue.ts';
import { differences, type Told } from '../support/standard/parts.ts';
import { STANDARD_TESTS } from '../support/standardTests.ts';
import { WorldBench } from '../support/worldBench.ts';

/**
 * Nothing in the catalogue is there for its name only: every fault that a job may begin with changes what some tool, eye
 * or ear tells, by more than a sound truck's tolerance and the instruments' accuracy. The battery of tests is worked by
 * actions alone, on the same truck with and without the fault. `--reporter=verbose` prints which test showed each.
 */

const BEGIN_WITH = FAULTS.filter(({ weight }) => weight > 0);
const good = new Map<string, readonly Told[]>();
/** Which test was first to show each fault. */
const shownBy: string[] = [];

beforeAll(() => {
  for (const { name, run } of STANDARD_TESTS) good.set(name, run(new WorldBench()));
}, 120_000);

test.each(BEGIN_WITH.map(({ id }) => id))(
  '%s shows in a standard test',
  (fault) => {
    for (const { name, run } of STANDARD_TESTS) {
      const told = differences(good.get(name) ?? [], run(new WorldBench([{ fault, severity: 0.5 }])));
      if (told.length === 0) continue;
      shownBy.push(`${fault} · ${name} · ${told.join('; ')}`);
      return;
    }
    expect.fail(`no standard test tells ${fault} from a sound truck`);
  },
  120_000,
);

test('the list of what showed each fault is complete, and more than one kind of test is needed', ({
  annotate,
}) => {
  void annotate(shownBy.join('\n'));
  expect(shownBy).toHaveLength(BEGIN_WITH.length);
  const tests = new Set(shownBy.map((line) => line.split(' · ')[1]));
  expect(tests.size).toBeGreaterThanOrEqual(8);
});

describe('the widths by which the tests tell one truck from another', () => {
  test.each(['truck-a', 'truck-b', 'truck-c', 'truck-d'])(
    'are wider than the tolerances of a sound truck: %s',
    (seed) => {
      const told = STANDARD_TESTS.flatMap(({ name, run }) =>
        differences(good.get(name) ?? [], run(new WorldBench([], { seed }))).map(
          (line) => `${name}: ${line}`,
        ),
      );
      expect(told).toEqual([]);
    },
    120_000,
  );
});
