import { afterAll, describe, expect, it } from 'vitest';
import { type Golden, keepGolden, keptGolden, LEAST_OF_FULL } from './goldenJobs.ts';
import { weighedGolden } from './weighedGolden.ts';

const renewing = process.env.GOLDEN === 'renew';

/**
 * Whole jobs by file of actions, weighed by every suspect's own bench, with the score and the end state they must give. A
 * golden job that moves is a change of version and wants its reason in the commit; then renew the file with GOLDEN=renew, one
 * test file at a time.
 */
export function goldenSuite(title: string, names: readonly string[]): void {
  describe(title, () => {
    const golden = keptGolden();
    const found = new Map<string, Golden>();
    afterAll(() => {
      if (renewing) keepGolden(found);
    });

    it.each(names)('%s ends as it must', (name) => {
      const job = sat(name);
      found.set(name, job);
      // Bounds of the assessment design: careful at least 90, parts changer at most 30, guesser at most 25.
      if (name.endsWith('.full.txt')) expect(job.score, name).toBeGreaterThanOrEqual(LEAST_OF_FULL);
      if (name.endsWith('.parts-changer.txt')) expect(job.score, name).toBeLessThanOrEqual(30);
      if (name.endsWith('.lucky-guess.txt')) expect(job.score, name).toBeLessThanOrEqual(25);
      if (!renewing) expect(job).toEqual(golden[name]);
    });
  });
}

function sat(name: string): Golden {
  const { record, facts } = weighedGolden(name);
  const { score, verdict, rules } = facts;
  return {
    score: score.total,
    parts: Object.fromEntries(score.parts.map(({ part, points }) => [part, points])),
    right: verdict.right,
    missed: rules.filter(({ outcome }) => outcome === 'missed').map(({ rule }) => rule),
    endHash: record.endHash,
  };
}
