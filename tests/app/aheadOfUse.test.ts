import { expect, it } from 'vitest';
import { AheadOfUse } from '../../src/app/AheadOfUse.ts';

it('fetches ahead once, when the bench has stood for a second of frames, and not before it stands', () => {
  let fetched = 0;
  const ahead = new AheadOfUse(() => {
    fetched += 1;
  });
  for (let i = 0; i < 500; i++) ahead.frame(false);
  expect(fetched).toBe(0);
  for (let i = 0; i < 59; i++) ahead.frame(true);
  expect(fetched).toBe(0);
  for (let i = 0; i < 200; i++) ahead.frame(true);
  expect(fetched).toBe(1);
});
