import type { Locator, Page } from '@playwright/test';
import { KeyHands } from './support/KeyHands.ts';
import { LongTasks } from './support/LongTasks.ts';
import { logBattery } from './support/logBattery.ts';
import { expect, test } from './support/test.ts';

/** A short job to its debrief: key on, the sense line read and logged, key off, a verdict by that entry. */
async function sitToTheDebrief(page: Page): Promise<void> {
  const hands = new KeyHands(page);
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await page.getByRole('button', { name: 'Take the job' }).click();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  await logBattery(hands);
  await hands.choose('Key', 'On');
  await hands.press('Wait 10 s');
  await hands.choose('Key', 'Off');
  await hands.verdict('sense wire, cavity 3', 'open', [1]);
  await hands.close();
  await expect(page.getByRole('heading', { name: 'Debrief', exact: true })).toBeVisible({ timeout: 60_000 });
}

const valueText = (slider: Locator) => slider.getAttribute('aria-valuetext');

test('the debrief gives its reasons, and the job is seen again from inside, by keys', async ({
  page,
}, info) => {
  test.setTimeout(240_000);
  const tasks = new LongTasks(page);
  await tasks.watch();
  await sitToTheDebrief(page);
  const main = page.getByRole('main');
  await expect(main).toContainText(/Your entry 1 .* the sense wire, cavity 3 .* %/);
  await expect(main).toContainText('What you knew when you decided');

  // The list of its parts leads to each, with the focus.
  const parts = page.getByRole('navigation', { name: 'Parts of this debrief' });
  await parts.getByRole('button', { name: 'Your log' }).click();
  await expect(page.getByRole('region', { name: 'Your log' })).toBeFocused();
  await expect(page.getByRole('region', { name: 'Your log' })).toBeInViewport();
  await expect(parts.locator('.part-in-sight').filter({ hasText: 'Your log' })).toHaveCount(1);

  const moment = page.getByRole('slider', { name: 'Moment of the job' });
  const cutaway = page.getByRole('img', { name: /^Cut-away of the unit/ });
  const instruments = page.locator('.replay-instruments');
  await expect(cutaway).toBeVisible({ timeout: 30_000 });
  await tasks.tell('before the replay');
  await moment.focus();
  await page.keyboard.press('Home');
  expect(await valueText(moment)).toMatch(/^00:00:00/);
  await expect(cutaway).toHaveAccessibleName(/Sense voltage 0\.0\d V/);
  // From action to action until the key is on: then the pull-up shows on the sense line, as far as this truck lets it.
  for (let i = 0; i < 60 && !/key on$/.test((await valueText(moment)) ?? ''); i++)
    await page.keyboard.press('PageDown');
  expect(await valueText(moment)).toMatch(/after: key on$/);
  await expect(cutaway).toHaveAccessibleName(/Sense voltage (?!0\.0)\d\.\d\d V/);
  await expect(instruments).toContainText(/Key\s*on/);
  await page.keyboard.press('PageUp');
  await expect(cutaway).toHaveAccessibleName(/Sense voltage 0\.0\d V/);
  await expect(instruments).toContainText(/Key\s*off/);
  // A second, and a tenth.
  const at = Number(await moment.inputValue());
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Shift+ArrowRight');
  expect(Number(await moment.inputValue())).toBe(at - 20_000 + 2_000);

  const steps = page.getByRole('slider', { name: 'Step of the stacked chart' });
  await steps.focus();
  await page.keyboard.press('End');
  expect(await valueText(steps)).toMatch(/^After entry 1\. .*sense wire, cavity 3 /);
  await page.keyboard.press('ArrowLeft');
  expect(await valueText(steps)).toMatch(/^After the complaint\. /);
  await page.keyboard.press('Enter');
  expect(await moment.inputValue()).toBe('0');
  await page.getByText('The same as a table').click();
  await expect(page.getByRole('table').first().getByRole('row')).toHaveCount(3);

  await page.getByRole('radio', { name: '16 ×' }).check();
  await page.getByRole('button', { name: 'Play' }).click();
  await expect.poll(async () => Number(await moment.inputValue())).toBeGreaterThan(5 * 20_000);
  await page.getByRole('button', { name: 'Pause' }).click();
  const stood = await moment.inputValue();
  await page.waitForTimeout(400);
  expect(await moment.inputValue()).toBe(stood);
  info.annotations.push({ type: 'record', description: await tasks.tell('replay') });
});

/** Every word of a debrief whose replay stands, and every name of what is drawn in it. */
async function wordsOf(page: Page): Promise<readonly string[]> {
  await expect(page.getByRole('img', { name: /^Cut-away of the unit/ })).toBeVisible({ timeout: 30_000 });
  await expect(page.locator('.replay-instruments')).toContainText('V');
  return page.getByRole('main').evaluate((main) => {
    const words: string[] = [];
    for (const element of main.querySelectorAll('*')) {
      for (const name of ['aria-label', 'aria-valuetext'])
        if (element.hasAttribute(name)) words.push(`${name}: ${element.getAttribute(name)}`);
      for (const node of element.childNodes)
        if (node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim()) words.push(node.nodeValue.trim());
    }
    return words;
  });
}

test('a debrief that is read again says word for word what it said when the job was closed', async ({
  page,
}) => {
  await sitToTheDebrief(page);
  const closed = await wordsOf(page);
  expect(closed.length).toBeGreaterThan(100);
  await page.getByRole('button', { name: 'Back to the job board' }).first().click();
  // Nothing of it is left in the page: it is read from what the browser keeps.
  await page.reload();
  await page.getByRole('button', { name: 'Read the debrief' }).click();
  expect(await wordsOf(page)).toEqual(closed);
});

test('the debrief fits a narrow screen, and a job left behind leaves no worker', async ({ page }) => {
  await sitToTheDebrief(page);
  await page.setViewportSize({ width: 360, height: 780 });
  await expect(page.getByRole('img', { name: /^Cut-away of the unit/ })).toBeVisible({ timeout: 30_000 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  await page.getByRole('button', { name: 'Back to the job board' }).first().click();
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  await expect.poll(() => page.workers().length).toBe(0);
});
