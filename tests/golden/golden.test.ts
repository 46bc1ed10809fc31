import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';

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

const actionsFolder = new URL('./actions/', import.meta.url);
const goldenFile = new URL('./golden.json', import.meta.url);
const names = readdirSync(actionsFolder).filter((name) => name.endsWith('.txt'));

function sat(name: string): Golden {
  const id = name.split('.')[0] ?? '';
  const file = new URL(`../../scenarios/${id}.yaml`, import.meta.url);
  const scenario = loadScenario(readFileSync(file, 'utf8'), `${id}.yaml`);
  const lines = parseActions(readFileSync(new URL(name, actionsFolder), 'utf8'));
  if (!scenario.ok || !lines.ok) throw new Error(JSON.stringify([scenario, lines]));
  const sitting = Sitting.begin(scenario.value);
  const run = runActions(sitting, lines.value);
  if (!run.ok)
    throw new Error(`${name}:${run.error.line}: "${run.error.text}" was refused: ${run.error.refusal}`);
  const record = sitting.record();
  const facts = debrief(scenario.value, record);
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
    expect(names.filter((name) => name.endsWith('.full.txt'))).toHaveLength(3);
  });
});
