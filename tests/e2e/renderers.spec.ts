import type { Page } from '@playwright/test';
import { apart, type Coarse, coarsen } from './support/coarse.ts';
import { logBattery } from './support/logBattery.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

/** The two draw edges and letters a little otherwise: measured 0.6 apart and no cell far off. Two leads elsewhere are 2.6 and 48 cells. */
const MOST_MEAN = 1;
/** The meter's last digit hunts. */
const MOST_CELLS = 2;

const drawing = (page: Page) => page.getByRole('region', { name: 'Bench', exact: true }).locator('canvas');

/** By what the bench is drawn: a canvas has one kind of context and gives no other. */
function kind(page: Page): Promise<string> {
  return drawing(page).evaluate((canvas) =>
    (canvas as HTMLCanvasElement).getContext('2d') === null ? 'webgl' : 'canvas',
  );
}

test('the bench looks the same by WebGL as on the plain canvas', async ({ page, browser }) => {
  const desk = await browser.newPage();
  const seen = async (): Promise<Coarse> => {
    await page.mouse.move(5, 5);
    return coarsen(desk, await page.locator('.stage').screenshot(), false);
  };
  const hands = new PointerHands(page);
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await takeTheJob(page, hands);
  const begun = await seen();
  await logBattery(hands);
  expect(await kind(page)).toBe('canvas');
  const worked = await seen();
  expect(apart(begun, worked).mean, 'two leads elsewhere are seen').toBeGreaterThan(MOST_MEAN);

  await page.goto('./?render=webgl#/job/ready-by-friday');
  await expect(drawing(page)).toBeVisible({ timeout: 30_000 });
  // It comes up layer by layer.
  await expect(async () => {
    const { mean, cells } = apart(worked, await seen());
    expect(cells, 'cells far off').toBeLessThanOrEqual(MOST_CELLS);
    expect(mean).toBeLessThanOrEqual(MOST_MEAN);
  }).toPass({ timeout: 30_000 });
  expect(await kind(page)).toBe('webgl');
  await desk.close();
});
