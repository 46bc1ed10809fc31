import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { BUDGETS } from '../../src/platform/node/build/budgets.ts';
import { gzipped } from '../../src/platform/node/build/sizes.ts';
import { BenchPage } from '../bench/screen/BenchPage.ts';
import { E2E_ADDRESS } from './support/address.ts';

const DIST = join(import.meta.dirname, '..', '..', 'dist');

function weight(files: readonly string[]): number {
  return files.reduce((sum, file) => sum + gzipped(readFileSync(join(DIST, file))), 0);
}

// The build works its sums out from who imports whom; here is what a browser fetches of it from a cold start.
test('board and bench are fetched within their budgets', async () => {
  const bench = await BenchPage.open(`${E2E_ADDRESS.replace(/\/$/, '')}/`);
  try {
    await bench.board();
    const first = await bench.fetchedBy('h1');
    expect(first.length).toBeGreaterThan(5);
    expect(weight(first)).toBeLessThanOrEqual(BUDGETS['first screen']);
    await bench.job('first-day-on-the-bench');
    const whole = await bench.fetchedBy('canvas');
    for (const part of [/evidenceWorker/, /shop-.*\.json/, /createScene/, /first-day/, /DSEG7/]) {
      expect(
        whole.some((file) => part.test(file)),
        String(part),
      ).toBe(true);
    }
    expect(weight(whole)).toBeLessThanOrEqual(BUDGETS.bench);
  } finally {
    await bench.close();
  }
});
