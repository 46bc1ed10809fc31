import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from '@playwright/test';
import { BUDGETS } from '../../src/platform/node/build/budgets.ts';
import { gzipped } from '../../src/platform/node/build/sizes.ts';
import { BenchPage } from '../bench/screen/BenchPage.ts';
import { E2E_ADDRESS } from './support/address.ts';

const DIST = join(import.meta.dirname, '..', '..', 'dist');

const TABLES = /shop-.*\.json/;

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
    const fetched = (files: readonly string[], part: RegExp): boolean =>
      files.some((file) => part.test(file));
    for (const part of [/evidenceWorker/, /createScene/, /first-day/, /DSEG7/]) {
      expect(fetched(whole, part), String(part)).toBe(true);
    }
    expect(weight(whole)).toBeLessThanOrEqual(BUDGETS.bench);
    // What weighs the evidence comes once the bench stands, were nothing done at it.
    expect(fetched(whole, TABLES)).toBe(false);
    await expect
      .poll(async () => (await bench.fetchedByNow()).some((file) => TABLES.test(file)), { timeout: 30_000 })
      .toBe(true);
  } finally {
    await bench.close();
  }
});

test('in Spanish both come within the same, a job with its words and no other’s, and no word of English before', async () => {
  const bench = await BenchPage.open(`${E2E_ADDRESS.replace(/\/$/, '')}/`, 'es-US');
  try {
    await bench.page.addInitScript(() => {
      const seen: string[] = [];
      Object.assign(globalThis, { titlesSeen: seen });
      new MutationObserver(() => {
        const title = document.querySelector('h1')?.textContent;
        if (title && title !== seen.at(-1)) seen.push(title);
      }).observe(document, { childList: true, subtree: true, characterData: true });
    });
    await bench.board('Tablero de trabajos');
    const first = await bench.fetchedBy('h1');
    expect(first.some((file) => file.includes('catalogue'))).toBe(false);
    expect(weight(first)).toBeLessThanOrEqual(BUDGETS['first screen in Spanish']);
    await expect(bench.page.locator('main [lang="en"]')).toHaveCount(0);
    expect(
      await bench.page.evaluate(() => (globalThis as unknown as { titlesSeen: string[] }).titlesSeen),
    ).toEqual(['Tablero de trabajos']);
    // A job that is opened at once has all its words too, and no others come with it.
    await bench.page.getByRole('button', { name: /Primer día en el banco/ }).click();
    await bench.page.getByRole('button', { name: 'Tomar el trabajo' }).click({ timeout: 30_000 });
    await bench.page.getByRole('region', { name: 'Banco', exact: true }).locator('canvas').waitFor();
    await expect(bench.page.locator('[lang="en"]')).toHaveCount(0);
    const whole = await bench.fetchedBy('canvas');
    const jobs = whole.filter((file) => /first-day-on-the-bench|not-a-click|ready-by-friday/.test(file));
    expect(jobs.map((file) => file.replace(/-[\w-]{8}\.js$/, ''))).toEqual([
      'assets/first-day-on-the-bench',
      'assets/first-day-on-the-bench',
    ]);
    expect(whole.filter((file) => file.includes('/benchScreen-'))).toHaveLength(1);
    expect(weight(whole)).toBeLessThanOrEqual(BUDGETS['bench in Spanish']);
  } finally {
    await bench.close();
  }
});
