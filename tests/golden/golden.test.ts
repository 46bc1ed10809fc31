import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { goldenLevel, goldenNames, keptGolden, TRAPPED } from '../support/goldenJobs.ts';
import { goldenSuite } from '../support/goldenSuite.ts';

it('golden jobs are all on the list, a full one for each scenario that is a job', () => {
  if (process.env.GOLDEN !== 'renew') expect(goldenNames).toEqual(Object.keys(keptGolden()).sort());
  const full = goldenNames.flatMap((name) => (name.endsWith('.full.txt') ? [name.split('.')[0]] : []));
  const jobs = readdirSync('scenarios').filter(
    (name) => name.endsWith('.yaml') && !name.startsWith('first-minutes'),
  );
  expect(full).toEqual(jobs.map((name) => name.split('.')[0]).sort());
});

goldenSuite(
  'golden jobs of levels 1 and 2',
  goldenNames.filter((name) => goldenLevel(name) <= 2 && !TRAPPED.includes(name)),
);
