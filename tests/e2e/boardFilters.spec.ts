import type { Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

/** Titles of the jobs that are shown, in their order. */
async function shown(page: Page): Promise<readonly string[]> {
  return page
    .locator('.cards h3')
    .evaluateAll((titles) => titles.map((title) => title.lastChild?.textContent ?? ''));
}

async function atTheBoard(page: Page): Promise<void> {
  await page.goto('./?render=canvas');
  await expect(page.getByRole('heading', { level: 1, name: 'Job board' })).toBeVisible();
}

const find = (page: Page) => page.getByRole('search', { name: 'Find a job' });
/** What came of it, below the choices. */
const found = (page: Page) => page.locator('.board-filter-count');

test('the board is narrowed by words, level, item and skill, says how many are left, and forgets it again', async ({
  page,
}) => {
  await atTheBoard(page);
  const all = await page.locator('.cards .card').count();
  expect(all).toBeGreaterThanOrEqual(20);
  const said = found(page).getByRole('status');
  await expect(said).toHaveText('');

  await find(page).getByRole('searchbox', { name: 'Words' }).fill('hose NEW');
  await expect(page.getByRole('heading', { level: 3, name: /Every hose is new/ })).toBeVisible();
  const byWords = await page.locator('.cards .card').count();
  expect(byWords).toBeLessThan(all);
  await expect(said).toHaveText(`${byWords} of ${all} jobs`);

  await find(page).getByRole('searchbox').fill('');
  await find(page).getByRole('combobox', { name: 'Level' }).selectOption({ label: 'Level 3' });
  await expect(page.getByRole('heading', { level: 2, name: 'Level 3' })).toBeVisible();
  await expect(page.getByRole('heading', { level: 2, name: 'Level 1' })).toHaveCount(0);

  await find(page)
    .getByRole('combobox', { name: 'You practise' })
    .selectOption({ label: 'Proving your tools' });
  const both = await shown(page);
  expect(both.length).toBeGreaterThan(0);
  await expect(said).toHaveText(`${both.length} of ${all} jobs`);

  await find(page).getByRole('searchbox').fill('nothing is called this');
  await expect(said).toHaveText('No job fits all of this.');
  await expect(page.locator('.cards .card')).toHaveCount(0);
  await found(page).getByRole('button', { name: 'Show all jobs' }).click();
  await expect(page.locator('.cards .card')).toHaveCount(all);
  await expect(said).toHaveText('');
});

test('an item lists several jobs and says that it need not be the one', async ({ page }) => {
  await atTheBoard(page);
  const items = find(page).getByRole('combobox', { name: 'In question' });
  const values = await items
    .locator('option')
    .evaluateAll((options) => options.map((one) => (one as HTMLOptionElement).value));
  expect(values.length).toBeGreaterThan(10);
  for (const value of values.filter((one) => one !== '')) {
    await items.selectOption(value);
    expect((await shown(page)).length, value).toBeGreaterThanOrEqual(2);
  }
  await expect(find(page)).toContainText('Whether it is the one is yours to prove.');
});

test('what was chosen is still there after a job was looked at, and stands in no address', async ({
  page,
}) => {
  await atTheBoard(page);
  await find(page).getByRole('combobox', { name: 'Level' }).selectOption({ label: 'Level 2' });
  const before = await shown(page);
  expect(page.url()).not.toMatch(/level|filter/i);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await expect(page.getByRole('button', { name: 'Take the job' })).toBeVisible({ timeout: 30_000 });
  await page.goBack();
  await expect(find(page).getByRole('combobox', { name: 'Level' })).toHaveValue('2');
  // The job that was opened lies on the bench now, in a row of its own.
  const level = page.locator('.board-row-level-2 h3');
  await expect(level).toHaveCount(before.length - 1);
  await expect(page.getByRole('heading', { level: 2, name: 'Level 1' })).toHaveCount(0);
});

test('by keys alone, with the focus where it was', async ({ page }) => {
  await atTheBoard(page);
  const words = find(page).getByRole('searchbox');
  await words.focus();
  await page.keyboard.type('smoke');
  await expect(found(page).getByRole('status')).toHaveText(/^\d+ of \d+ jobs$/);
  await expect(words).toBeFocused();
  await page.keyboard.press('Tab');
  await expect(find(page).getByRole('combobox', { name: 'Level' })).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await expect(find(page).getByRole('combobox', { name: 'Level' })).toHaveValue('1');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(found(page).getByRole('button', { name: 'Show all jobs' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(words).toHaveValue('');
  // The button is gone; the focus is where the next search begins.
  await expect(words).toBeFocused();
});

test('each job has its number in its level, and one is the next', async ({ page }) => {
  await atTheBoard(page);
  await page.getByRole('button', { name: 'Not now' }).click();
  const first = page.locator('.board-row-level-1 .card').first();
  await expect(first.getByRole('heading')).toHaveAccessibleName(/^Level 1, job 1: .* next$/);
  await expect(page.locator('.card .tag', { hasText: /^next$/ })).toHaveCount(1);
});

test('in a narrow window the choices wait behind a key, and that some jobs are left out is said all the same', async ({
  page,
}) => {
  await page.setViewportSize({ width: 360, height: 740 });
  await atTheBoard(page);
  const key = find(page).getByRole('button', { name: 'Find a job' });
  const level = find(page).getByRole('combobox', { name: 'Level' });
  await expect(key).toHaveAttribute('aria-expanded', 'false');
  await expect(level).toBeHidden();
  await key.click();
  await expect(key).toHaveAttribute('aria-expanded', 'true');
  await level.selectOption({ label: 'Level 4' });
  await key.click();
  await expect(level).toBeHidden();
  await expect(found(page).getByRole('status')).toHaveText(/^\d+ of \d+ jobs$/);
  await found(page).getByRole('button', { name: 'Show all jobs' }).click();
  await expect(find(page).getByRole('searchbox')).toBeFocused();
});
