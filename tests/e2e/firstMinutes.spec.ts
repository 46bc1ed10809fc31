import type { Page } from '@playwright/test';
import { type Hands, place, site } from './support/Hands.ts';
import { KeyHands } from './support/KeyHands.ts';
import { PointerHands } from './support/PointerHands.ts';
import { expect, test } from './support/test.ts';

const BENCH = './?render=canvas';
const BATTERY_POSITIVE = place('Battery positive');
const BATTERY_NEGATIVE = place('Battery negative');
const offer = (page: Page) => page.getByRole('region', { name: 'New here? Five minutes at the bench' });
const steps = (page: Page) => page.getByRole('tabpanel');

async function isAt(page: Page, step: number): Promise<void> {
  await expect(steps(page).getByRole('status').first()).toHaveText(`Step ${step} of 14`);
  await expect(steps(page).locator('[aria-current="step"]')).toHaveCount(1);
}

/** From the offer over the page before to the first step. */
async function toTheBench(page: Page, hands: Hands): Promise<void> {
  await hands.press('To the bench');
  await begin(page, hands);
}

/** From the page before to the first step. */
async function begin(page: Page, hands: Hands): Promise<void> {
  await expect(page.getByRole('heading', { level: 1, name: 'Five minutes at the bench' })).toBeVisible({
    timeout: 30_000,
  });
  await expect(page.getByRole('main')).toContainText('Key off before the plug is parted or mated.');
  await hands.press('To the bench');
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  await isAt(page, 1);
}

/** Does what each step says, and sees that it is done by that and by nothing before. */
async function workFirstMinutes(page: Page, hands: Hands): Promise<void> {
  await hands.choose('Meter selector', 'DC volts');
  await isAt(page, 2);
  await hands.carry('Black lead', BATTERY_NEGATIVE);
  await isAt(page, 3);
  await hands.carry('Red lead', BATTERY_POSITIVE);
  await isAt(page, 4);
  await expect(page.getByRole('button', { name: 'Log this reading' })).toHaveClass(/asked/);
  await hands.log();
  await isAt(page, 5);
  await expect(page.getByRole('button', { name: 'Log this reading' })).not.toHaveClass(/asked/);
  await hands.press('Plug, mated');
  await isAt(page, 6);
  await hands.carry('Ground lead, second end', place('Unit half, terminal 2'));
  await hands.carry('Ground lead, first end', BATTERY_NEGATIVE);
  await isAt(page, 7);
  await hands.carry('Jumper, far end', place('Unit half, terminal 1'));
  await hands.carry('Jumper, supply clip', BATTERY_POSITIVE);
  await isAt(page, 8);
  for (let n = 0; n < 3; n++) {
    await hands.press('Jumper switch, off');
    await page.waitForTimeout(200);
    await hands.press('Jumper switch, on');
    await page.waitForTimeout(200);
  }
  await isAt(page, 9);
  await hands.layDown('Jumper, supply clip');
  await hands.layDown('Jumper, far end');
  await hands.layDown('Ground lead, first end');
  await hands.layDown('Ground lead, second end');
  await hands.press('Plug, parted');
  await hands.press('Wiggle the plug');
  await isAt(page, 10);
  await hands.layDown('Canister hose');
  await hands.carry('Plug A', site('End of the canister hose'));
  await hands.layDown('Air hose');
  await hands.carry('Plug B', site('End of the air hose'));
  await isAt(page, 11);
  await hands.carry('Cap A', site('Air port'));
  await hands.press('Clamp at the air port, loose');
  await hands.carry('Pump hose', site('Canister port'));
  await hands.press('Clamp at the canister port, loose');
  await isAt(page, 12);
  await hands.press('Cavity 3. Put a back-probe pin in');
  await hands.carry('Red lead', place('Cavity 3 wire side'));
  await hands.choose('Key', 'On');
  await isAt(page, 13);
  await hands.stroke();
  await hands.stroke();
  await isAt(page, 14);
  await hands.press('Release lever, shut');
  await expect(page.getByRole('button', { name: /^Meter shows [89]\.\d/ })).toBeVisible();
  await hands.choose('Key', 'Off');
  await expect(steps(page).getByRole('heading', { name: 'That was it. You can now' })).toBeVisible();
  await expect(steps(page)).toContainText('14 steps done');
}

test('from a fresh profile by pointer: offered, worked, seen inside, and on to the first job', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await page.goto(BENCH);
  await expect(offer(page)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'First day on the bench' })).toBeVisible();
  const hands = new PointerHands(page);
  await toTheBench(page, hands);
  // Nothing of a job is in the way.
  for (const name of ['Give a verdict', 'Parts cupboard', 'Road test']) {
    await expect(page.getByRole('button', { name })).toHaveCount(0);
  }
  await expect(page.getByRole('tab')).toHaveText(['Steps', 'Cautions', 'Log']);

  // Seen inside, and gone again: what is closed is not in the page.
  await page.getByText('See inside the unit').click();
  await expect(page.getByRole('img', { name: /^Cut-away of the unit/ })).toBeVisible();
  await page.getByText('See inside the unit').click();
  await expect(page.getByRole('img', { name: /^Cut-away of the unit/ })).toHaveCount(0);

  await workFirstMinutes(page, hands);
  await expect(page.locator('body')).not.toContainText(/of 100|score/i);
  await steps(page).getByRole('button', { name: 'Open the first job: First day on the bench' }).click();
  await expect(page.getByRole('button', { name: 'Take the job' })).toBeVisible({ timeout: 30_000 });

  await page.getByRole('button', { name: 'Known Good: Back to the job board' }).click();
  await expect(offer(page)).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Five minutes at the bench' })).toBeVisible();
  // It is no finished job, and no score stands anywhere.
  await expect(page.getByRole('heading', { name: 'Finished jobs' })).toHaveCount(0);
  await expect(page.getByText(/^0 of \d+ jobs done/)).toBeVisible();
});

test('the same by keys alone', async ({ page }) => {
  test.setTimeout(240_000);
  await page.goto(BENCH);
  await expect(offer(page)).toBeVisible();
  const hands = new KeyHands(page);
  await toTheBench(page, hands);
  await workFirstMinutes(page, hands);
  await hands.press('To the job board');
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
});

test('the unit seen inside goes with the pump while the steps go on', async ({ page }) => {
  test.setTimeout(120_000);
  await page.goto(BENCH);
  const hands = new PointerHands(page);
  await toTheBench(page, hands);
  await page.getByText('See inside the unit').click();
  const drawing = page.getByRole('img', { name: /^Cut-away of the unit/ });
  await expect(drawing).toHaveAccessibleName(/Vacuum switch open/);
  await hands.layDown('Canister hose');
  await hands.layDown('Air hose');
  await hands.carry('Cap A', site('Air port'));
  await hands.press('Clamp at the air port, loose');
  await hands.carry('Pump hose', site('Canister port'));
  await hands.press('Clamp at the canister port, loose');
  await hands.press('Full stroke');
  await expect(drawing).toHaveAccessibleName(/Vacuum switch closed/);
  await hands.press('Release lever, shut');
  await expect(drawing).toHaveAccessibleName(/Vacuum switch open/);
});

test('may be skipped step by step and as a whole, and is gone on with after either', async ({ page }) => {
  test.setTimeout(120_000);
  await page.goto(BENCH);
  const hands = new PointerHands(page);
  await toTheBench(page, hands);
  for (const step of [2, 3, 4]) {
    await hands.press('Skip this step');
    await isAt(page, step);
  }
  await page.getByText('3 passed over').click();
  await expect(steps(page).getByText('→ passed over')).toHaveCount(3);
  // Gone home with it open: it lies there, and goes on where it was.
  await page.getByRole('button', { name: 'Known Good: Back to the job board' }).click();
  await page.getByRole('button', { name: 'Go on with the five minutes' }).click();
  await isAt(page, 4);
  await hands.press('Skip the rest');
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  // Pressed unawares it takes nothing away.
  await page.getByRole('button', { name: 'Go on with the five minutes' }).click();
  await isAt(page, 4);
});

test('"Not now" is kept over a reload, and leaves a small line', async ({ page }) => {
  await page.goto(BENCH);
  await offer(page).getByRole('button', { name: 'Not now' }).click();
  await expect(offer(page)).toHaveCount(0);
  const later = page.getByRole('button', { name: 'Five minutes at the bench' });
  // Who pressed by keys is not thrown back to the top of the page.
  await expect(later).toBeFocused();
  await page.reload();
  await expect(later).toBeVisible();
  await expect(offer(page)).toHaveCount(0);
  await later.click();
  await expect(page.getByRole('heading', { level: 1, name: 'Five minutes at the bench' })).toBeVisible({
    timeout: 30_000,
  });
});

test('on a phone the step stands over the bench, and the view that has the next thing is marked', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(BENCH);
  const hands = new PointerHands(page);
  await toTheBench(page, hands);
  const strip = page.locator('.step-strip');
  await expect(strip).toContainText('Step 1 of 14 This is the meter.');
  await expect(strip).toContainText('Click or tap DC volts');
  const view = (name: string) => page.getByRole('button', { name, exact: true });
  // The first thing is in sight: no way to it has to be shown.
  await expect(page.locator('.view-bar .asked')).toHaveCount(0);
  await view('Pump').click();
  await expect(view('Meter')).toHaveClass('asked');
  await view('Meter').click();
  await expect(page.locator('.view-bar .asked')).toHaveCount(0);

  // Where the way to a thing is shown, it leads to the whole of it.
  await hands.choose('Meter selector', 'DC volts');
  await isAt(page, 2);
  await view('Power').click();
  const asked = page.locator('.view-bar .asked');
  await expect(asked).toHaveCount(1);
  await asked.click();
  await expect(asked).toHaveCount(0);
  const edges = (of: string) =>
    page.locator(of).evaluate((one) => {
      const { left, top, right, bottom } = one.getBoundingClientRect();
      return { left, top, right, bottom };
    });
  await page.waitForTimeout(600);
  const [lead, stage] = [await edges('[data-spot="end:meter-black"]'), await edges('.stage')];
  expect(lead.left).toBeGreaterThanOrEqual(stage.left);
  expect(lead.right).toBeLessThanOrEqual(stage.right);
  expect(lead.top).toBeGreaterThanOrEqual(stage.top);
  expect(lead.bottom).toBeLessThanOrEqual(stage.bottom);

  // However far the bench is scrolled, the step stays in the window, from its first line.
  await page.locator('.hand-keys').evaluate((keys) => keys.scrollIntoView({ block: 'end' }));
  expect((await edges('.step-strip')).top).toBeGreaterThanOrEqual(0);
});

test('the steps of the walkthrough are folded around the present one, and open when asked', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await page.goto(BENCH);
  await page.getByRole('button', { name: /First day on the bench/ }).click();
  await page.getByRole('button', { name: 'Take the job' }).click({ timeout: 30_000 });
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  await expect(steps(page).locator('li')).toHaveCount(3);
  const height = (): Promise<number> => page.evaluate(() => document.documentElement.scrollHeight);
  expect(await height()).toBeLessThan(2600);
  await page.getByText(/^Show all: \d+ more steps$/).click();
  await expect(steps(page).locator('li').nth(40)).toBeVisible();
  await page.getByText(/1 step done/).click();
  await expect(steps(page).getByText('✓ done')).toHaveCount(1);
});
