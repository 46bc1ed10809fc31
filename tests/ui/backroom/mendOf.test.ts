import { expect, test } from 'vitest';
import { mendOf } from '../../../src/ui/backroom/proof/mendOf.ts';

const NONE = { stored: [], pending: [] };

test('codes are written into the order, or into the variant that they are of', () => {
  const held = { stored: ['P0455'], pending: ['P0456'] };
  const codes = [
    { code: 'P0455', status: 'stored' },
    { code: 'P0456', status: 'pending' },
  ];
  expect(mendOf({ kind: 'codes-differ', forbids: true, stated: NONE, held })).toEqual({
    path: 'work-order.codes',
    value: codes,
    words: 'Write P0455 stored, P0456 pending into the order',
  });
  const of = { variant: 3, end: 'only' } as const;
  expect(mendOf({ kind: 'variant-codes-differ', forbids: true, of, stated: NONE, held })).toMatchObject({
    path: 'variants[1].codes',
    value: codes,
  });
  const first = { variant: 1, end: 'worst' } as const;
  expect(mendOf({ kind: 'variant-codes-differ', forbids: true, of: first, stated: NONE, held })?.path).toBe(
    'work-order.codes',
  );
});

test('where the drives leave no code, those of the order are taken out', () => {
  const stated = { stored: ['P0455'], pending: [] };
  const mend = mendOf({ kind: 'codes-differ', forbids: true, stated, held: NONE });
  expect(mend).toMatchObject({ value: [], words: 'Take the codes out of the order' });
});

test('a limit is given what careful work wants, a level what it is estimated at', () => {
  const tight = { kind: 'limit-too-tight', forbids: true, limit: 60, par: 169, wanted: 212 } as const;
  expect(mendOf({ ...tight, of: 'minutes' })).toEqual({
    path: 'limits.minutes',
    value: 212,
    words: 'Give 212 minutes',
  });
  expect(mendOf({ ...tight, of: 'dollars' })?.path).toBe('limits.dollars');
  expect(mendOf({ kind: 'level-differs', forbids: false, level: 1, estimate: 3 })?.value).toBe(3);
});

test('what somebody has to think of has no key', () => {
  expect(mendOf({ kind: 'not-solvable', forbids: true, tests: 9 })).toBeNull();
});
