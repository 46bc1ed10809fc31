import { describe, expect, test } from 'vitest';
import { sitScenario } from '../../src/training/learners/sitScenario.ts';
import { shipped, shopTables } from './support.ts';

/** The whole table is a command of its own; this is one seed of two of its scenarios. */
describe.each(['nine-volts-and-still-a-code', 'silent-on-command'])('%s', (id) => {
  test('scores tell learners apart as they should', () => {
    const one = sitScenario(shipped(id), shopTables(), 1, () => undefined);
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
