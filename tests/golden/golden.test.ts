import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { debrief } from '../../src/training/score/debrief.ts';
import { goldenNames as names, sitGolden } from '../support/goldenJobs.ts';

/**
 * Whole jobs by file of actions, with the score and the end state they must give. A golden job that moves is a change
 * of version and wants its reason in the commit; then renew the file with GOLDEN=renew.
 */
interface Golden {
  readonly score: number;
  readonly parts: Readonly<Record<string, number>>;
  readonly right: boolean;
  readonly missed: readonly string[];
  readonly endHash: string;
}

const goldenFile = new URL('./golden.json', import.meta.url);

function sat(name: string): Golden {
  const { scenario, record } = sitGolden(name);
  const facts = debrief(scenario, record);
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  const { score, verdict, rules } = facts.value;
  return {
    score: score.total,
    parts: Object.fromEntries(score.parts.map(({ part, points }) => [part, points])),
    right: verdict.right,
    missed: rules.filter(({ outcome }) => outcome === 'missed').map(({ rule }) => rule),
    endHash: record.endHash,
  };
}

describe('golden jobs', () => {
  const found = new Map(names.map((name) => [name, sat(name)]));
  if (process.env.GOLDEN === 'renew') {
    writeFileSync(goldenFile, `${JSON.stringify(Object.fromEntries(found), null, 2)}\n`);
  }
  const golden = JSON.parse(readFileSync(goldenFile, 'utf8')) as Record<string, Golden>;

  it('are all on the list', () => {
    expect(names).toEqual(Object.keys(golden).sort());
  });

  it.each(names)('%s ends as it must', (name) => {
    expect(found.get(name)).toEqual(golden[name]);
  });

  it('score by what was proven: a full job high, a guess and a parts changer low', () => {
    // Bounds of the assessment design: careful at least 90, parts changer at most 30, guesser at most 25.
    for (const [name, { score }] of found) {
      if (name.endsWith('.full.txt')) expect(score, name).toBeGreaterThanOrEqual(90);
      if (name.endsWith('.parts-changer.txt')) expect(score, name).toBeLessThanOrEqual(30);
      if (name.endsWith('.lucky-guess.txt')) expect(score, name).toBeLessThanOrEqual(25);
    }
    expect(names.filter((name) => name.endsWith('.full.txt'))).toHaveLength(12);
  });
});
