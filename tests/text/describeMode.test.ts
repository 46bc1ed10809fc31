import { describe, expect, it } from 'vitest';
import { ITEMS } from '../../src/sim/devices/items.ts';
import { FAULTS } from '../../src/sim/faults/catalogue.ts';
import { describeMode } from '../../src/text/describeMode.ts';
import { catalogue } from '../../src/text/en/catalogue.ts';
import { modesOf } from '../../src/training/evidence/modesOf.ts';

describe('what may be wrong with an item', () => {
  it('has words of its own for each of its modes', () => {
    for (const item of ITEMS) {
      const words = modesOf(item).map((mode) => describeMode(item, mode));
      expect(new Set(words).size, item).toBe(words.length);
    }
  });

  it('has no words for a mode that the catalogue of faults does not know', () => {
    const known = new Set(FAULTS.map(({ item, mode }) => `${item}.${mode}`));
    const worded = Object.entries(catalogue.itemModes).flatMap(([item, modes]) =>
      Object.keys(modes).map((mode) => `${item}.${mode}`),
    );
    expect(worded.filter((key) => !known.has(key))).toEqual([]);
  });

  it('may be left unsaid, and a mode from elsewhere is given as it is', () => {
    expect(describeMode('fuse', null)).toBe('I cannot say');
    expect(describeMode('fuse', 'no-such-mode')).toBe('no-such-mode');
  });
});
