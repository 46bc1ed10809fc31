import { expect, test } from 'vitest';
import { copyTitle } from '../../../src/app/backroom/copyTitle.ts';

test('a copy is called after its draft, and copies are counted', () => {
  const taken = ['The lamp'];
  for (const name of ['The lamp (copy)', 'The lamp (copy 2)', 'The lamp (copy 3)']) {
    const next = copyTitle(taken.at(-1) ?? '', taken);
    expect(next).toBe(name);
    taken.push(next);
  }
});

test('a title with signs of its own is left as it is', () => {
  expect(copyTitle('1.5 (a) or [b]?', ['1.5 (a) or [b]?'])).toBe('1.5 (a) or [b]? (copy)');
});
