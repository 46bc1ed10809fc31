import type { Page } from '@playwright/test';
import { site } from './support/Hands.ts';
import { logBattery } from './support/logBattery.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

const BENCH = '/?render=canvas';

/** What the learner has on the bench and in the log, as the page tells it. */
async function standing(page: Page): Promise<{ controls: string[]; log: string }> {
  const controls = await page
    .getByRole('region', { name: 'Bench' })
    .getByRole('button')
    .evaluateAll((all) =>
      // The last digit of a live reading flickers; what is set up does not.
      all
        .map((one) => one.getAttribute('aria-label') ?? '')
        .filter((name) => name !== '' && !name.startsWith('Meter shows')),
    );
  const log = await page.getByRole('tabpanel').textContent();
  return { controls, log: log ?? '' };
}

async function seconds(page: Page): Promise<number> {
  const [h = 0, m = 0, s = 0] = ((await page.getByRole('timer').textContent()) ?? '').split(':').map(Number);
  return h * 3600 + m * 60 + s;
}

test('a reload in mid-job goes on where it was: bench, log and time', async ({ page }) => {
  await page.goto(BENCH);
  await page.getByRole('button', { name: /Every hose is new/ }).click();
  const hands = new PointerHands(page);
  await takeTheJob(page, hands);
  await hands.open('Log');
  await logBattery(hands);
  await hands.carry('Plug A', site('Cone of the pump hose'));
  await hands.press('Full stroke');
  await page.waitForTimeout(700);
  await hands.press('Full stroke');
  await page.waitForTimeout(700);
  await hands.log();
  await expect(page.getByRole('tabpanel')).toContainText(/pump hose closed/);
  const before = await standing(page);
  const timeBefore = await seconds(page);
  expect(before.controls.some((name) => name.startsWith('Red lead, on battery positive'))).toBe(true);

  await page.reload();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  await hands.open('Log');
  const after = await standing(page);
  expect(after.controls).toEqual(before.controls);
  expect(after.log).toMatch(/12\.[4-8]\d V/);
  const closed = /pump hose closed/g;
  expect(before.log).toMatch(closed);
  expect(after.log.match(closed)?.length).toBe(before.log.match(closed)?.length);
  const timeAfter = await seconds(page);
  expect(timeAfter).toBeGreaterThanOrEqual(timeBefore);
  expect(timeAfter).toBeLessThan(timeBefore + 15);

  // The vacuum the learner drew is still there: nothing was done over again.
  await hands.log();
  await expect(page.getByRole('tabpanel')).toContainText(/1\d(\.5)? inHg/);
});

test('a closed tab is offered again on the job board', async ({ context }) => {
  const first = await context.newPage();
  await first.goto(BENCH);
  await first.getByRole('button', { name: /Every hose is new/ }).click();
  await first.getByRole('button', { name: 'Take the job' }).click();
  await expect(first.getByRole('radio', { name: 'DC volts', exact: true })).toBeAttached({ timeout: 30_000 });
  await first.getByRole('radio', { name: 'DC volts', exact: true }).click();
  await first.waitForTimeout(500);
  await first.close();

  const second = await context.newPage();
  await second.goto(BENCH);
  await second.getByRole('button', { name: /Resume the job/ }).click();
  await expect(second.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked({ timeout: 30_000 });
  await second.close();
});
