import { expect, it } from 'vitest';
import { goldenLevel, goldenNames, keptGolden, TRAPPED } from '../support/goldenJobs.ts';
import { goldenSuite } from '../support/goldenSuite.ts';

it('golden jobs are all on the list, a full one for each of twenty scenarios', () => {
  if (process.env.GOLDEN !== 'renew') expect(goldenNames).toEqual(Object.keys(keptGolden()).sort());
  expect(goldenNames.filter((name) => name.endsWith('.full.txt'))).toHaveLength(20);
});

goldenSuite(
  'golden jobs of levels 1 and 2',
  goldenNames.filter((name) => goldenLevel(name) <= 2 && !TRAPPED.includes(name)),
);
