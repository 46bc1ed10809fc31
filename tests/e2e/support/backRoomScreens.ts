import { expect, type Page } from '@playwright/test';
import { type Look, openFolds } from './everyScreen.ts';
import type { Word } from './words.ts';

/** The back room from the empty shelf to a job that is handed out, with a look at each pane and dialog on the way. */
export async function backRoomScreens(page: Page, word: Word, look: Look): Promise<void> {
  const press = (name: string) => page.getByRole('button', { name, exact: true }).first().click();
  const dialog = page.locator('dialog[open]');
  const told = page.locator('#draft-problems');
  await page.evaluate(() => {
    location.hash = '#/back-room';
  });
  await page.getByRole('button', { name: word('backRoom.newDraft') }).waitFor({ timeout: 30_000 });
  await look('back room, an empty shelf');
  await press(word('backRoom.newDraft'));
  await page.locator('.back-columns').waitFor();
  await page.locator('.bench-pane .stage canvas').waitFor({ timeout: 60_000 });
  await openFolds(page);
  await look('a new draft, with all that is to be written');

  await page.locator('#field-title').fill('Steps in class');
  await page.locator('#field-summary').fill('Short.');
  await page.locator('#field-aims-0').fill('Look.');
  await page.locator('#field-work-order-number').fill('HP-1');
  await page.locator('#field-work-order-complaint').fill('The lamp is on.');
  await page.locator('#field-remark').fill('A wire.');
  await press(word('backRoom.addFault'));
  await dialog.waitFor();
  await look('a fault to be chosen');
  await dialog
    .locator('.fault-pick')
    .filter({ hasText: word('faults.ground-resistance') })
    .click();
  await page.locator('.readings table').first().waitFor({ timeout: 60_000 });
  await openFolds(page);
  await look('a draft with a fault and its readings');

  await page.locator('#field-mode').selectOption('walkthrough');
  await press(word('backRoom.addTo', { name: word('formFields.walkthrough.label') }));
  await page.locator('.form-languages input').check();
  await page.locator('.variants-fold .add').last().click();
  await openFolds(page);
  await page.locator('.problem-ways button').last().click();
  await look('a draft with a step, in two languages, in its text');
  // The way to a line leads to the text, behind which the form lies at this width.
  await page.locator('#pane-form').click();
  await page.locator('.form-languages input').uncheck();
  await page.locator('#field-mode').selectOption('practice');
  for (let step = 0; step < 3; step++) await press(word('backRoom.undo'));
  await page.locator('#field-mode').selectOption('practice');
  await page.locator('#pane-bench').click();
  await openFolds(page);
  await look('the bench of a draft');
  await page.locator('#pane-proof').click();
  await page.locator('.proof li').first().waitFor({ timeout: 120_000 });
  await look('the proof of a draft');

  await expect(told).toHaveText(word('backRoom.inOrder'));
  await press(word('handOut.open'));
  await dialog.waitFor();
  await dialog.getByRole('radio').last().check();
  await page.locator('#hand-out-code').fill('1234');
  await look('a job to be handed out');
  await page.keyboard.press('Escape');
  await press(word('backRoom.toShelf'));
  await page.locator('.shelf-drafts').waitFor();
  await look('back room, a draft on the shelf');
  await page.locator('.shelf-keys button').last().click();
  await dialog.waitFor();
  await look('a draft to be removed');
  await dialog.locator('button.act').click();
}
