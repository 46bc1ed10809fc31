import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

const JOB = 'scenarios/all-hoses-new.yaml';

/** Opens a shipped job as a draft, with its proof in sight. */
async function proofOf(page: Page, path: string) {
  await page.goto('./?render=canvas#/back-room');
  await page.locator('input[type=file]').first().setInputFiles(path);
  await page.getByRole('tab', { name: 'Proof' }).click({ timeout: 30_000 });
  await page.getByRole('checkbox', { name: 'Text beside the form' }).check();
  return page.getByRole('region', { name: 'Proof', exact: true });
}

const headline = (page: Page) => page.locator('.proof').getByRole('heading', { level: 2 });
const draft = (page: Page) => page.getByLabel('Text of the scenario file');

test('a draft is proved as check proves it, and what was changed since is proved anew', async ({ page }) => {
  test.setTimeout(300_000);
  const proof = await proofOf(page, JOB);
  await expect(headline(page)).toHaveText(/Fit to give out$/, { timeout: 120_000 });
  await expect(proof.getByRole('status')).toHaveText(/^Fit to give out\. /);

  const plan = proof.getByRole('table').first();
  const minutes = await plan
    .locator('tbody td:nth-child(2)')
    .evaluateAll((cells) => cells.map((cell) => Number.parseFloat(cell.textContent ?? '')));
  const par = Number.parseFloat((await plan.locator('tfoot td').first().textContent()) ?? '');
  expect(minutes.length).toBeGreaterThan(4);
  // Each line is rounded to a tenth, par to a whole minute.
  expect(Math.abs(minutes.reduce((sum, one) => sum + one, 0) - par)).toBeLessThan(
    0.5 + 0.05 * minutes.length,
  );
  await expect(proof.locator('.learner-plot tbody tr')).toHaveCount(6);
  await expect(proof.locator('.learner-figure').first()).toHaveText(/^\d+$/);
  await expect(proof).toContainText('the truth');

  // Two changes, one right after the other: the last one counts.
  const text = readFileSync(JOB, 'utf8');
  await draft(page).fill(text.replace('level: 2', 'level: 9'));
  await draft(page).fill(text.replace('code: P0456', 'code: P0442'));
  await expect(headline(page)).toHaveText(/Not yet: 1 thing to mend/, { timeout: 120_000 });
  await expect(proof).toContainText('The work order states P0442 stored');
  await expect(proof).toContainText('They differ.');

  // What cannot be read is told at once, place by place.
  await draft(page).fill(text.replace('title: Every hose is new', 'titel: Every hose is new'));
  await expect(headline(page)).toHaveText(/Not a whole scenario yet/, { timeout: 10_000 });
  await expect(proof.getByRole('listitem').filter({ hasText: 'titel' })).toHaveCount(1);
  await expect(proof.locator('.proof-sheets')).toHaveCount(0);
});

test('a fault’s slider shows good beside faulted, and what it shows goes with the slider', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await proofOf(page, JOB);
  const readings = page.getByRole('region', { name: 'What the tests would read' });
  await expect(readings).toHaveAttribute('aria-busy', 'false', { timeout: 90_000 });
  await expect(readings).toContainText(/\d+ tests give it away/);
  await readings.getByText(/\d+ more tests that give it away/).click();
  const lost = readings.getByRole('row', { name: /Gauge, lost in the wait/ }).first();
  const [good, faulted] = [lost.getByRole('cell').first(), lost.getByRole('cell').last()];
  await expect(good).toHaveText(/^0\.0\sinHg/);
  const before = await faulted.textContent();
  const slider = page.getByRole('slider').first();
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(faulted).not.toHaveText(before ?? '', { timeout: 30_000 });
  await expect(good).toHaveText(/^0\.0\sinHg/);
  await expect(slider).toBeFocused();
  await expect(readings.getByRole('status')).toHaveText(/\d+ of \d+ tests tell this from a good truck\./, {
    timeout: 30_000,
  });
});
