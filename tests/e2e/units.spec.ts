import { site } from './support/Hands.ts';
import { KeyHands } from './support/KeyHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

const BENCH = './?render=canvas';

test('the units turn in mid-job: what is already logged is told in the others, and a reload keeps them', async ({
  page,
}) => {
  await page.goto(BENCH);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  const hands = new KeyHands(page);
  await takeTheJob(page, hands);
  await hands.open('Log');
  await hands.carry('Plug A', site('Cone of the pump hose'));
  await hands.press('Full stroke');
  await hands.press('Full stroke');
  await hands.press('Wait 10 s');
  await hands.log();
  const log = page.getByRole('tabpanel');
  await expect(log).toContainText(/\d inHg/);
  const inHg = Number(/([\d.]+) inHg/.exec((await log.textContent()) ?? '')?.[1]);
  expect(inHg).toBeGreaterThan(3);
  const gauge = page.getByRole('region', { name: 'Bench' }).getByRole('button', { name: /^Gauge, about/ });
  await expect(gauge.first()).toHaveAccessibleName(/ inHg/);

  await hands.press('Settings');
  await page.getByRole('radio', { name: /^metric/ }).check();
  await page.keyboard.press('Escape');
  await expect(log).toContainText(/\d kPa/);
  await expect(page.getByText(/inHg/)).toHaveCount(0);
  const kPa = Number(/([\d.]+) kPa/.exec((await log.textContent()) ?? '')?.[1]);
  // An eye reads to half an inch of mercury, or to a whole kilopascal: 3.386 389 of them to the inch (NIST SP 811).
  expect(Math.abs(kPa - inHg * 3.386389)).toBeLessThanOrEqual(0.25 * 3.386389 + 0.5);
  await expect(gauge.first()).toHaveAccessibleName(/ kPa/);
  await hands.open('Service data');
  await expect(page.getByRole('tabpanel', { name: 'Service data' })).toContainText('0.5 mm²');

  await page.reload();
  await expect(page.getByRole('tab', { name: 'Log' })).toBeVisible({ timeout: 30_000 });
  await hands.open('Log');
  await expect(page.getByRole('tabpanel')).toContainText(`${kPa} kPa`);
});

test.describe('on a device that speaks for a region', () => {
  test.use({ locale: 'en-CA' });

  test('the page is metric from its first word where that region is', async ({ page }) => {
    await page.goto(BENCH);
    await page.getByRole('button', { name: 'Settings' }).click();
    await expect(page.getByRole('radio', { name: /^metric/ })).toBeChecked();
  });
});
