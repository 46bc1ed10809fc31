import { expect, test } from 'vitest';
import { numberRows } from '../../src/base/numberRows.ts';

test('rows are zeros, as long as asked, and lie in one block in their order', () => {
  const { mass, pressure, clock } = numberRows({ mass: 2, pressure: 3, clock: 1 });
  expect([mass.length, pressure.length, clock.length]).toEqual([2, 3, 1]);
  mass.set([1, 2]);
  pressure.set([3, 4, 5]);
  clock.set([6]);
  expect([...new Float64Array(mass.buffer)]).toEqual([1, 2, 3, 4, 5, 6]);
  expect(clock.buffer).toBe(mass.buffer);
});

test('a row may be empty', () => {
  const { none, one } = numberRows({ none: 0, one: 1 });
  expect([none.length, one.length]).toEqual([0, 1]);
});
