import { expect, test } from 'vitest';
import { copyPlain } from '../../src/base/copyPlain.ts';

test('a copy is equal all the way down and shares nothing with what it was copied from', () => {
  const state = { a: 1, b: null, c: ['x', { d: [true, 2.5] }], e: { f: { g: 'h' } }, i: [] as number[] };
  const copy = copyPlain(state);
  expect(copy).toEqual(state);
  copy.c.push('y');
  copy.e.f.g = 'other';
  copy.i.push(1);
  expect(state).toEqual({ a: 1, b: null, c: ['x', { d: [true, 2.5] }], e: { f: { g: 'h' } }, i: [] });
});
