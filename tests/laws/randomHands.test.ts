import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { EVERY_RIG, FIRST_RIG } from '../../src/sim/rigs/rigs.ts';
import { KIRCHHOFF_AMPS, soakRun } from '../soak/soakRun.ts';

/** Seeds that once failed a long run, with the number of actions that brought the trouble out. Never taken out again. */
const FAILED_ONCE = JSON.parse(
  readFileSync(new URL('../soak/failedOnce.json', import.meta.url), 'utf8'),
) as readonly { readonly seed: string; readonly actions: number }[];

/** A slice of the long run of `npm run soak`, which does a million actions in the same way. */
const SLICE = Array.from({ length: 40 }, (_, i) => `hands ${i}`);
const ACTIONS = 400;
/** The other rigs are of the same parts: fewer hands for each. */
const OTHERS = EVERY_RIG.filter(({ id }) => id !== FIRST_RIG).flatMap(({ id }) =>
  SLICE.slice(0, 16).map((seed) => [id, seed] as const),
);

describe('random hands on random worlds: no assert, no NaN, no unsolved step, Kirchhoff kept', () => {
  test.each(SLICE)('%s', (seed) => {
    const result = soakRun(seed, ACTIONS);
    expect(result.trouble).toBeNull();
    expect(result.done).toBeGreaterThan(ACTIONS / 10);
    expect(result.worstAmps).toBeLessThanOrEqual(KIRCHHOFF_AMPS);
  });

  test.each(OTHERS)('at the %s: %s', (rig, seed) => {
    const result = soakRun(seed, ACTIONS, rig);
    expect(result.trouble).toBeNull();
    expect(result.done).toBeGreaterThan(ACTIONS / 10);
  });

  if (FAILED_ONCE.length > 0) {
    test.each(FAILED_ONCE)('$seed, which failed once', ({ seed, actions }) => {
      expect(soakRun(seed, actions).trouble).toBeNull();
    });
  }
});
