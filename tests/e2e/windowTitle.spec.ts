import { expect, test } from './support/test.ts';

test('the window is named after its screen, in the language of the page', async ({ page }) => {
  await page.goto('./?render=canvas');
  await expect(page).toHaveTitle('Job board – Known Good');
  await page.getByRole('link', { name: 'For instructors: the back room' }).click();
  await expect(page).toHaveTitle('Back room – Known Good');
  await page.goBack();
  await expect(page).toHaveTitle('Job board – Known Good');
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('radio', { name: 'Español' }).check();
  await expect(page).toHaveTitle('Tablero de trabajos – Known Good');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /Listo para el viernes/ }).click();
  await expect(page).toHaveTitle('Listo para el viernes – Known Good');
});

test('an address that leads nowhere is told to, above the board', async ({ page }) => {
  await page.goto('./?render=canvas#/blah/blah');
  await expect(page.getByText('There is nothing at this address.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 1, name: 'Job board' })).toBeVisible();
  await page.goto('./?render=canvas#/');
  await expect(page.getByText('There is nothing at this address.')).toHaveCount(0);
});
