import type { Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

const order = (page: Page) => page.locator('.order');

async function takeTheJob(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take the job' }).click();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
}

test('what a job asks for beside the usual stands on its order, and what it has not is nowhere on the bench', async ({
  page,
}) => {
  await page.goto('./?render=canvas#/job/out-of-the-van');
  await expect(order(page)).toContainText('The unit (leak detection pump), plug at the unit');
  await expect(order(page)).toContainText(
    'LED tester, bench supply, 1 qt jar, water manometer, smoke machine',
  );
  await expect(order(page)).toContainText('150 book minutes · $60 for parts');
  await takeTheJob(page);
  await expect(page.getByText('0 of 150 book minutes · $0 of $60 for parts')).toBeVisible();

  const bench = page.getByRole('region', { name: 'Bench' });
  for (const shelf of ['Leads and lamps', 'Vacuum and water', 'Smoke', 'Hands and eyes']) {
    await bench.getByRole('radio', { name: shelf }).click({ force: true });
    await expect(bench.getByRole('button', { name: /manometer|jar|smoke|LED|bench supply/i })).toHaveCount(0);
  }
  await page.getByRole('button', { name: 'Parts cupboard' }).click();
  await expect(page.getByRole('dialog')).toContainText('Meter leads');
  await expect(page.getByRole('dialog')).not.toContainText('Known-good unit');
  await page.keyboard.press('Escape');

  // What is spent counts up beside its limit.
  await page.getByRole('button', { name: 'Log this reading' }).click();
  await page.getByRole('button', { name: 'Full stroke' }).click();
  for (let turn = 0; turn < 4; turn++) await page.getByRole('button', { name: 'Log this reading' }).click();
  await expect(page.getByText('1 of 150 book minutes')).toBeVisible();
});

test('a job in two languages is read in the one of the page, from the board to the bench', async ({
  page,
}) => {
  await page.goto('./?render=canvas');
  await expect(page.getByRole('button', { name: /Out of the van/ })).toBeVisible();
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('radio', { name: 'Español' }).check();
  await page.keyboard.press('Escape');
  const job = page.getByRole('button', { name: /Con lo que trae la camioneta/ });
  await expect(job).toBeVisible();
  await job.click();
  await expect(order(page)).toContainText('Luz encendida desde la última vuelta a la toma lejana');
  await expect(order(page)).toContainText('150 minutos de libro');
  await expect(order(page).locator('[lang]')).toHaveCount(0);
});
