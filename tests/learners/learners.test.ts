import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { openTables } from '../../src/training/evidence/openTables.ts';
import { sitScenario } from '../../src/training/learners/sitScenario.ts';
import type { ScenarioValidity } from '../../src/training/learners/validity.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const SITTINGS_MS = 240_000;

function satBy(id: string): ScenarioValidity {
  const tables = openTables(readFileSync(at('assets/evidence/shop.json'), 'utf8'));
  const scenario = loadScenario(readFileSync(at(`scenarios/${id}.yaml`), 'utf8'), `${id}.yaml`);
  if (!tables.ok || !scenario.ok) throw new Error(`${id} or the tables cannot be opened`);
  return sitScenario(scenario.value, tables.value, 1, () => undefined);
}

/** The whole table is a command of its own; this is one seed of two of its scenarios. */
describe.each(['nine-volts-and-still-a-code', 'silent-on-command'])('%s', (id) => {
  test('scores tell learners apart as they should', { timeout: SITTINGS_MS }, () => {
    const one = satBy(id);
    const medianOf = (name: string): number =>
      one.learners.find(({ learner }) => learner === name)?.median ?? Number.NaN;
    expect(one.faults).toEqual([]);
    expect(one.learners).toHaveLength(12);
    expect(medianOf('careful')).toBeGreaterThan(medianOf('by-the-book'));
    expect(medianOf('by-the-book')).toBeGreaterThan(medianOf('hasty'));
    expect(medianOf('hasty')).toBeGreaterThan(medianOf('parts-changer'));
    expect(one.paired).toEqual({ won: 1, of: 1 });
  });
});
