import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { knownGood, knownGoodProcess, root } from '../support/commandLine.ts';

const FIRST_MINUTES = join(root, 'scenarios', 'first-minutes.yaml');

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'known-good-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('an introduction on the command line', () => {
  it('is checked and played like a job, and never scored', async () => {
    expect(await knownGood('check', FIRST_MINUTES)).toMatchObject({ code: 0, err: '' });
    const actions = join(folder, 'actions.txt');
    const kept = join(folder, 'record.json');
    writeFileSync(actions, 'accept\nmeter volts-dc\nlog\nclose\n');
    const played = await knownGood('play', FIRST_MINUTES, actions, '--record', kept);
    expect(played).toMatchObject({ code: 0, err: '' });
    expect(played.out).toContain('An introduction asks for no verdict');
    expect(played.out).not.toMatch(/of 100|score of/);
    const record = JSON.parse(readFileSync(kept, 'utf8')) as { mode: string; claimedScore: number | null };
    expect(record).toMatchObject({ mode: 'introduction', claimedScore: null });

    // A record that claims nothing is in order; one that claims points is not, whatever they are.
    const claims = join(folder, 'claims.json');
    writeFileSync(claims, JSON.stringify({ ...record, claimedScore: 100 }));
    const graded = await knownGood('grade', kept, claims, '--json');
    expect(graded.code).toBe(1);
    const grades = JSON.parse(graded.out) as {
      score: number | null;
      holds: boolean | null;
      problem: string;
    }[];
    expect(grades.map(({ score, holds, problem }) => [score, holds, problem])).toEqual([
      [null, null, 'introduction-has-no-score'],
      [null, false, 'introduction-has-no-score'],
    ]);
    expect(await knownGood('grade', kept)).toMatchObject({ code: 0 });

    // Nor does a record that says it was a job get one.
    const forged = join(folder, 'forged.json');
    writeFileSync(forged, JSON.stringify({ ...record, mode: 'practice', claimedScore: 100 }));
    expect((await knownGood('grade', forged)).code).toBe(1);
  });

  it('is sat by no simulated learner', () => {
    const run = knownGoodProcess('validity', FIRST_MINUTES, '--seeds', '1');
    expect(run.code).toBe(2);
    expect(run.err).toContain('has no score to compare');
  });
});
