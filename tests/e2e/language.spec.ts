import { test as bare } from '@playwright/test';
import { logBattery } from './support/logBattery.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

const BENCH = '/?render=canvas';

test('the language turns in mid-job: nothing is lost, every control has its new name, and a reload keeps it', async ({
  page,
}) => {
  await page.goto(BENCH);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  const hands = new PointerHands(page);
  await takeTheJob(page, hands);
  await hands.open('Log');
  await logBattery(hands);
  await expect(page.getByRole('tabpanel')).toContainText('Battery positive to battery negative');

  await hands.press('Settings');
  await page.getByRole('radio', { name: 'Español' }).check();
  await expect(page.getByRole('dialog', { name: 'Ajustes' })).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es-US');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('heading', { name: 'Listo para el viernes' })).toBeVisible();
  await expect(page.getByRole('tabpanel')).toContainText('Positivo de la batería a negativo de la batería');
  await expect(page.getByRole('tabpanel')).toContainText(/12\.[4-8]\d V/);
  const bench = page.getByRole('region', { name: 'Banco' });
  await expect(
    bench.getByRole('button', { name: /^Punta roja, en positivo de la batería/ }).first(),
  ).toBeAttached();
  await expect(page.locator('[lang="en"]')).toHaveCount(0);

  await page.reload();
  await expect(page.getByRole('tab', { name: 'Registro' })).toBeVisible({ timeout: 30_000 });
  await expect(page.locator('html')).toHaveAttribute('lang', 'es-US');
});

bare('a language that does not come is told in one sentence, and asked for again', async ({ page }) => {
  const catalogues = /\/_virtual_spanish-board-[^/]*\.js$/;
  await page.route(catalogues, (route) => route.abort());
  await page.goto(BENCH);
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('radio', { name: 'Español' }).click();
  await expect(page.getByText(/Spanish could not be fetched/)).toBeVisible();
  await expect(page.getByRole('radio', { name: 'English' })).toBeChecked();
  await page.unroute(catalogues);
  await page.getByRole('radio', { name: 'Español' }).check();
  await expect(page.getByRole('dialog', { name: 'Ajustes' })).toBeVisible();
  await expect(page.getByText(/Spanish could not be fetched|No se pudo cargar/)).toHaveCount(0);
});
