import type { Locator, Page } from '@playwright/test';
import { KeyHands } from './support/KeyHands.ts';
import { expect, test } from './support/test.ts';

/** Takes the first practice job and logs so many readings. */
async function atTheBench(page: Page, entries: number): Promise<void> {
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await page.getByRole('button', { name: 'Take the job' }).click();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  await page.getByRole('tab', { name: 'Log' }).click();
  for (let id = 1; id <= entries; id++) {
    await page.getByRole('button', { name: 'Log this reading' }).click();
    await expect(page.getByRole('rowheader', { name: `Entry ${id}`, exact: true })).toBeVisible();
  }
}

function card(page: Page, name: string): Locator {
  return page.getByRole('tabpanel', { name: 'Suspects' }).getByRole('listitem').filter({ hasText: name });
}

function entry(page: Page, id: number): Locator {
  return page.getByRole('checkbox', { name: new RegExp(`^${id} `) });
}

test('a suspect is cleared by entries, looked up, taken back', async ({ page }) => {
  await atTheBench(page, 9);
  await page.getByRole('tab', { name: 'Suspects' }).click();
  const board = page.getByRole('tabpanel', { name: 'Suspects' });
  await expect(board).toContainText('Rule suspects out by what you read.');
  await expect(board.getByRole('listitem')).toHaveCount(24);

  const fuse = card(page, 'Fuse').first();
  await fuse.getByRole('button').click();
  const dialog = page.getByRole('dialog', { name: 'Suspect: fuse' });
  const set = dialog.getByRole('button', { name: 'Set this mark' });
  await expect(set).toBeDisabled();
  await expect(dialog.getByRole('button', { name: 'Take the mark back' })).toHaveCount(0);
  await dialog.getByRole('radio', { name: /^Cleared/ }).check();

  // Newest first, and eight at most.
  await expect(dialog.getByRole('checkbox').first()).toHaveAccessibleName(/^9 /);
  for (let id = 1; id <= 8; id++) await entry(page, id).check();
  await expect(entry(page, 9)).toBeDisabled();
  for (const id of [1, 3, 4, 6, 7, 8]) await entry(page, id).uncheck();
  await expect(entry(page, 9)).toBeEnabled();
  await set.click();

  await expect(page.getByRole('status').filter({ hasText: 'Fuse: cleared, by entries 2, 5.' })).toBeVisible();
  await expect(fuse.getByRole('button', { name: 'Fuse cleared' })).toBeFocused();
  await expect(board).toContainText('1 cleared · 0 convicted · 23 undecided');

  // A cited entry shows its sentence, and hides it again.
  const number = fuse.getByRole('button', { name: 'Entry 5', exact: true });
  await number.click();
  await expect(number).toHaveAttribute('aria-expanded', 'true');
  await expect(fuse.locator('p')).toHaveText(/^5 Gauge, pump hose open 0\sinHg/);
  await number.click();
  await expect(fuse.locator('p')).toHaveCount(0);

  await fuse.getByRole('button', { name: 'Fuse cleared' }).click();
  await expect(entry(page, 5)).toBeChecked();
  await dialog.getByRole('button', { name: 'Take the mark back' }).click();
  await expect(fuse.getByRole('button', { name: 'Fuse undecided' })).toBeFocused();
});

test('a mark begun at a log entry, and the verdict that takes it over and locks the board', async ({
  page,
}) => {
  await atTheBench(page, 3);
  await page.getByRole('button', { name: 'Cite entry 3 for a suspect' }).click();
  const cite = page.getByRole('dialog', { name: 'Cite entry 3' });
  await expect(entry(page, 3)).toBeChecked();
  await cite.getByRole('combobox').selectOption('Sense wire, cavity 3');
  await cite.getByRole('radio', { name: /^Convicted/ }).check();
  await entry(page, 1).check();
  await cite.getByRole('button', { name: 'Set this mark' }).click();
  await expect(page.getByRole('button', { name: 'Cite entry 3 for a suspect' })).toBeFocused();

  await page.getByRole('button', { name: 'Give a verdict' }).click();
  const verdict = page.getByRole('dialog', { name: 'Verdict' });
  await expect(verdict.getByRole('radio', { name: 'sense wire, cavity 3' })).toBeChecked();
  for (const id of [1, 3]) await expect(entry(page, id)).toBeChecked();
  await expect(entry(page, 2)).not.toBeChecked();
  // What is wrong must be said, or that it cannot be said.
  const give = verdict.getByRole('button', { name: 'Give this verdict' });
  await expect(give).toBeDisabled();
  await verdict.getByRole('radio', { name: 'I cannot say' }).check();
  await give.click();
  const lock = page.getByRole('dialog', { name: 'Lock this verdict?' });
  await expect(lock).toContainText(
    'You name the sense wire, cavity 3, and do not say what is wrong with it.',
  );
  await lock.getByRole('button', { name: 'Look again' }).click();
  await expect(verdict.getByRole('radio', { name: 'I cannot say' })).toBeChecked();
  await verdict.getByRole('radio', { name: 'open', exact: true }).check();
  await give.click();
  await expect(lock).toContainText('You name the sense wire, cavity 3: open.');
  await expect(lock).toContainText('You cite 2 log entries.');
  await lock.getByRole('button', { name: 'Lock it' }).click();

  await expect(page.getByRole('button', { name: /for a suspect$/ })).toHaveCount(0);
  await page.getByRole('tab', { name: 'Suspects' }).click();
  const board = page.getByRole('tabpanel', { name: 'Suspects' });
  await expect(board).toContainText('Locked.');
  await expect(card(page, 'Sense wire')).toContainText('convicted');
  // Nothing is left to press but the numbers of the cited entries.
  await expect(board.getByRole('button')).toHaveText(['1', '3']);
});

test('the board by keys alone', async ({ page }) => {
  await atTheBench(page, 2);
  const hands = new KeyHands(page);
  await hands.open('Suspects');
  await hands.press('Purge valve');
  await expect(page.getByRole('dialog', { name: 'Suspect: purge valve' })).toBeVisible();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await hands.press('Set this mark');
  await expect(page.getByRole('button', { name: 'Purge valve cleared' })).toBeFocused();
  await expect(card(page, 'Purge valve').getByRole('button', { name: 'Entry 2', exact: true })).toBeVisible();

  // Esc gives up: nothing is marked, and the focus goes back.
  await hands.press('Seal on the tank');
  await expect(page.getByRole('dialog', { name: 'Suspect: seal on the tank' })).toBeVisible();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Seal on the tank undecided' })).toBeFocused();
});

test('board, mark and verdict fit a screen of 360 pixels, with targets of 24', async ({ page }) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await atTheBench(page, 2);
  await page.getByRole('tab', { name: 'Suspects' }).click();
  await card(page, 'Fuse').first().getByRole('button').click();
  await page.getByRole('radio', { name: /^Cleared/ }).check();
  await entry(page, 1).check();
  await fits(page);
  await page.getByRole('button', { name: 'Set this mark' }).click();
  await fits(page);
  const number = await card(page, 'Fuse').first().getByRole('button', { name: 'Entry 1' }).boundingBox();
  expect(Math.min(number?.width ?? 0, number?.height ?? 0)).toBeGreaterThanOrEqual(24);
  await page.getByRole('tab', { name: 'Log' }).click();
  const cite = await page.getByRole('button', { name: 'Cite entry 1 for a suspect' }).boundingBox();
  expect(Math.min(cite?.width ?? 0, cite?.height ?? 0)).toBeGreaterThanOrEqual(24);
  await page.getByRole('button', { name: 'Give a verdict' }).click();
  await page.getByRole('radio', { name: 'the unit (leak detection pump)' }).check();
  await fits(page);
});

/** Nothing makes the page, or a dialog on it, scroll sideways. */
async function fits(page: Page): Promise<void> {
  const over = await page.evaluate(() =>
    [document.documentElement, ...document.querySelectorAll('dialog[open], .side-panel, .cite-list')]
      .filter((one) => one.scrollWidth > one.clientWidth)
      .map((one) => `${one.tagName}.${one.className}: ${one.scrollWidth} in ${one.clientWidth}`),
  );
  expect(over).toEqual([]);
}
