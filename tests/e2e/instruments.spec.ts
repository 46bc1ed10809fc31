import type { Page } from '@playwright/test';
import type { Hands } from './support/Hands.ts';
import { KeyHands } from './support/KeyHands.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeShot } from './support/shot.ts';
import { expect, test } from './support/test.ts';
import { tripOnTheColumn } from './support/waterColumn.ts';

/** Trip of the service data, 10 ± 0.8 inH2O, and what a quarter stroke may go past it (about 1.5 inH2O with the jar). */
const LOWEST = 9.2;
const HIGHEST = 12.3;

async function roadTest(page: Page, hands: Hands): Promise<void> {
  await hands.press('Road test');
  await expect(page.getByRole('dialog')).toContainText('The key is off');
  await expect(page.getByRole('button', { name: /^Drive 2 cycles/ })).toBeDisabled();
  await page.keyboard.press('Escape');
}

test('codes, jar and water column by pointer; the truck stays while tools are on it', async ({
  page,
}, info) => {
  test.setTimeout(240_000);
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Tight as a drum/ }).click();
  const hands = new PointerHands(page);
  const water = await tripOnTheColumn(page, hands);
  expect(water).toBeGreaterThan(LOWEST);
  expect(water).toBeLessThan(HIGHEST);
  await takeShot(page, info, 'water-column');
  await roadTest(page, hands);
});

test('the same by keys alone', async ({ page }) => {
  test.setTimeout(240_000);
  await page.goto('./?render=canvas');
  const hands = new KeyHands(page);
  await hands.press('Open the job: Tight as a drum');
  const water = await tripOnTheColumn(page, hands);
  expect(water).toBeGreaterThan(LOWEST);
  expect(water).toBeLessThan(HIGHEST);
});
