import type { Page } from '@playwright/test';
import { axeFindings, COLOUR_RULES, DRESSES, LIGHT } from './support/axe.ts';
import { backRoomScreens } from './support/backRoomScreens.ts';
import { everyScreen, guidedScreens, type Look } from './support/everyScreen.ts';
import { expectReadable } from './support/readable.ts';
import { expect, test } from './support/test.ts';
import { wordsOf } from './support/words.ts';

/** A screen in every dress, and read narrow, spaced and large. */
async function expectSound(page: Page, name: string): Promise<void> {
  expect.soft(await axeFindings(page), name).toEqual([]);
  for (const dress of DRESSES) {
    await page.emulateMedia(dress.media);
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    );
    expect.soft(await axeFindings(page, COLOUR_RULES), `${name}, ${dress.name}`).toEqual([]);
  }
  await page.emulateMedia(LIGHT);
  await expectReadable(page, name);
}

test('on no screen axe finds anything, light, dark and in high contrast, and every screen is read narrow, spaced and large', async ({
  page,
}) => {
  test.setTimeout(240_000);
  let looks = 0;
  await page.emulateMedia({ ...LIGHT, reducedMotion: 'reduce' });
  await page.goto('./?render=canvas');
  const look: Look = async (name) => {
    looks += 1;
    await expectSound(page, name);
  };
  await everyScreen(page, wordsOf('en'), look);
  await guidedScreens(page, wordsOf('en'), look);
  expect(looks).toBeGreaterThanOrEqual(38);
});

test.describe('in Spanish', () => {
  test.use({ locale: 'es-US' });

  test('the same', async ({ page }) => {
    test.setTimeout(240_000);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto('./?render=canvas');
    await expect(page.locator('html')).toHaveAttribute('lang', 'es-US');
    const look: Look = async (name) => {
      expect.soft(await axeFindings(page), name).toEqual([]);
      await expectReadable(page, name);
    };
    await everyScreen(page, wordsOf('es'), look);
    await guidedScreens(page, wordsOf('es'), look);
  });
});

test('in the back room axe finds nothing, in any dress, and it is read narrow, spaced and large', async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.emulateMedia({ ...LIGHT, reducedMotion: 'reduce' });
  await page.goto('./?render=canvas');
  let looks = 0;
  await backRoomScreens(page, wordsOf('en'), async (name) => {
    looks += 1;
    await expectSound(page, name);
  });
  expect(looks).toBe(10);
});

test.describe('the back room in Spanish', () => {
  test.use({ locale: 'es-US' });

  test('the same', async ({ page }) => {
    test.setTimeout(300_000);
    await page.emulateMedia({ reducedMotion: 'reduce' });
    await page.goto('./?render=canvas');
    await backRoomScreens(page, wordsOf('es'), async (name) => {
      expect.soft(await axeFindings(page), name).toEqual([]);
      await expectReadable(page, name);
    });
  });
});

test('axe can find: a picture without words, and grey on grey', async ({ page }) => {
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  await page.evaluate(() => {
    const picture = document.createElement('img');
    picture.src = 'data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=';
    picture.width = 40;
    document.body.append(picture);
    document.documentElement.style.setProperty('--kg-ink-soft', '#A8A8A8');
  });
  const found = await axeFindings(page);
  expect(found.some((finding) => finding.startsWith('image-alt'))).toBe(true);
  expect(found.some((finding) => finding.startsWith('color-contrast'))).toBe(true);
});
