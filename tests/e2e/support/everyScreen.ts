import { expect, type Page } from '@playwright/test';
import { handedOut } from './handedOut.ts';
import type { Word } from './words.ts';

export type Look = (name: string) => Promise<void>;

const SERVICE = ['circuit', 'tests', 'monitor', 'codes', 'tools'] as const;
const READER = ['codes', 'live', 'command'] as const;

/**
 * Goes through a practice job from the board to the debrief, and has every screen, tab and dialog on the way looked at once. Works in
 * either language.
 */
export async function everyScreen(page: Page, word: Word, look: Look): Promise<void> {
  const press = async (name: string | RegExp): Promise<void> => {
    await page.getByRole('button', { name, exact: true }).first().click();
  };
  const starting = (text: string): RegExp => new RegExp(`^${text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}`);
  const dialog = page.locator('dialog[open]');
  /** A question in a dialog goes first, the dialog after it. */
  const shut = async (): Promise<void> => {
    await expect(async () => {
      await page.keyboard.press('Escape');
      await page.waitForTimeout(120);
      expect(await dialog.count()).toBe(0);
    }).toPass();
  };
  const tab = (id: string) => page.locator(`#tab-${id}`).click();
  const turnKey = (to: 'off' | 'on') => page.locator(`[data-spot="key-position:${to}"]`).press('Space');

  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await look('job board');
  await page.locator('.board-filters select').nth(1).selectOption({ index: 3 });
  await page.locator('.card-more summary').first().click();
  await look('job board, narrowed to an item');
  await press(word('boardFilter.clear'));
  await press(word('bench.settings'));
  await dialog.waitFor();
  await look('settings');
  await shut();
  await page.setInputFiles('input[type=file]', handedOut());
  await dialog.locator('input').first().waitFor();
  await expect(dialog.locator('.job-files > li')).toHaveCount(3);
  await expect(dialog.getByRole('status')).toHaveCount(1);
  await look('job files');
  await shut();
  await look('job board with a job of a file');
  await page.locator('.card-file button').click();
  await dialog.waitFor();
  await look('a job of a file to be removed');
  await dialog.locator('button.act').click();
  await expect(page.locator('.card-file')).toHaveCount(0);
  await page
    .locator('button')
    .filter({ hasText: /Ready by Friday|Listo para el viernes/ })
    .first()
    .click();
  await page.getByRole('button', { name: word('order.accept'), exact: true }).waitFor();
  await look('work order');
  await press(word('order.accept'));
  await page.locator('.stage canvas').waitFor({ timeout: 30_000 });

  for (const id of ['order', 'log', 'suspects', 'coach']) {
    await tab(id);
    await look(`nothing logged yet, ${id}`);
  }
  await tab('data');
  for (const sheet of SERVICE) {
    await page.locator(`#service-tab-${sheet}`).click();
    await openFolds(page);
    await look(`service data, ${sheet}`);
  }
  await tab('reader');
  await look('reader, asleep');
  await turnKey('on');
  await page.locator('#reader-tab-codes').click();
  await press(word('reader.read'));
  await openFolds(page);
  for (const sheet of READER) {
    await page.locator(`#reader-tab-${sheet}`).click();
    await look(`reader, ${sheet}`);
  }
  await page.locator('#reader-tab-codes').click();
  await press(word('reader.clear'));
  await dialog.waitFor();
  await look('clear codes');
  await shut();

  await page.locator('[data-spot="meter-selector:volts-dc"]').press('Space');
  await page.locator('[data-spot="end:meter-red"]').press('Enter');
  await page.getByRole('listbox').waitFor();
  await look('a lead in hand');
  await page.keyboard.press('Escape');
  await page.locator('.log-button').click();
  await page.locator('.log-button').click();
  await tab('log');
  await page.locator('.entry-note').first().click();
  await look('log with a note begun');
  await page.keyboard.press('Escape');
  await press(word('bench.shortcuts'));
  await dialog.waitFor();
  await look('shortcuts');
  await shut();

  await tab('suspects');
  await page.locator('.suspect-head').first().click();
  await dialog.waitFor();
  await dialog.getByRole('radio').first().check();
  await dialog.getByRole('checkbox').first().check();
  await look('mark');
  await press(word('suspects.confirm'));
  await expect(dialog).toHaveCount(0);
  await page.locator('.suspect .cite-number').first().click();
  await look('suspects with a mark');
  await tab('coach');
  await page.locator('.coach-depth').first().click();
  await page.locator('.coach-answer h3').waitFor({ timeout: 60_000 });
  await look('coach, answering');

  await turnKey('off');
  await press(word('roadTest.open'));
  await dialog.waitFor();
  await page.locator('.road-go .big').click();
  await page.locator('.drive-report').waitFor({ timeout: 60_000 });
  await look('road test');
  await shut();
  await press(word('bench.cupboard'));
  await dialog.waitFor();
  await look('parts cupboard before the verdict');
  await shut();
  await tellTrouble(page);
  await look('trouble');
  await press(word('troubles.dismiss'));

  await press(word('bench.verdict'));
  await dialog.waitFor();
  await page.getByRole('radio', { name: word('items.unit'), exact: true }).check();
  await look('verdict on the unit');
  await page.getByRole('radio', { name: word('items.sense-wire'), exact: true }).check();
  await page.getByRole('radio', { name: word('itemModes.sense-wire.open'), exact: true }).check();
  await press(word('verdict.next'));
  await look('verdict to be locked');
  await press(word('verdict.lock'));
  await expect(dialog).toHaveCount(0);
  await look('repair');
  await tab('suspects');
  await look('suspects locked');
  await press(word('bench.cupboard'));
  await dialog.waitFor();
  await look('parts cupboard');
  await page
    .getByRole('button', { name: starting(word('cupboard.fit', { item: '' }).trim()) })
    .first()
    .click();
  await look('fit a part');
  await shut();
  await press(word('bench.closeJob'));
  await dialog.waitFor();
  await look('close the job');
  await dialog.locator('button.act').click();
  await page.getByRole('heading', { name: word('debrief.title'), exact: true }).waitFor({ timeout: 60_000 });
  await page.locator('.replay-instruments').waitFor({ timeout: 60_000 });
  await openFolds(page);
  await look('debrief with its replay');
  await page
    .getByRole('button', { name: new RegExp(word('app.back')) })
    .first()
    .click();
  await page.getByRole('heading', { level: 1 }).waitFor();
  await openFolds(page);
  await look('job board with a finished job');
}

/** Everything that is folded away, unfolded. */
export function openFolds(page: Page): Promise<void> {
  return page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
}

/** As when something in the program broke that nobody caught. */
function tellTrouble(page: Page): Promise<void> {
  return page.evaluate(() => {
    window.dispatchEvent(new ErrorEvent('error', { error: new Error('a spring') }));
  });
}

/** The first minutes from the job board to the bench with the inside view, and a walkthrough's steps. Begins at the board. */
export async function guidedScreens(page: Page, word: Word, look: Look): Promise<void> {
  const press = (name: string) => page.getByRole('button', { name, exact: true }).first().click();
  await press(word('introduction.open'));
  await page
    .locator('main')
    .getByRole('button', { name: word('introduction.begin'), exact: true })
    .waitFor();
  await look('first minutes, before the bench');
  await press(word('introduction.begin'));
  await page.locator('.stage canvas').waitFor({ timeout: 30_000 });
  await openFolds(page);
  await page.locator('#tab-steps').click();
  await look('first minutes, the first step');
  await page
    .getByRole('button', { name: new RegExp(word('app.back')) })
    .first()
    .click();
  await page
    .locator('button')
    .filter({ hasText: /First day on the bench|Primer día en el banco/ })
    .first()
    .click();
  await press(word('order.accept'));
  await page.locator('.stage canvas').waitFor({ timeout: 30_000 });
  await openFolds(page);
  await page.locator('.inside').waitFor({ timeout: 30_000 });
  await look('walkthrough, its steps and the inside of the unit');
}
