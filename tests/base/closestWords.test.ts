import { expect, test } from 'vitest';
import { closestWords } from '../../src/base/closestWords.ts';

// Distances of the two pairs by hand: kitten/sitting 3, kitten/kitchen 2, kitten/mitten 1 (textbook examples, from memory).
test('the closest comes first, and as close as each other keep their order', () => {
  expect(closestWords('kitten', ['sitting', 'kitchen', 'mitten', 'bitten'], 3)).toEqual([
    'mitten',
    'bitten',
    'kitchen',
  ]);
});

test('a word without end is compared by its beginning', () => {
  expect(closestWords('a'.repeat(1_000_000), ['b', 'aaa'], 1)).toEqual(['aaa']);
});
