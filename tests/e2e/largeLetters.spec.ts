import type { Page } from '@playwright/test';
import { layoutFaults } from './support/layoutFaults.ts';
import { dressed } from './support/readable.ts';
import { expect, test } from './support/test.ts';
import { wordsOf } from './support/words.ts';

/** WCAG 2.2, 1.4.4: letters of twice their size. */
const LARGE = 'html { font-size: 200% !important; }';
const PHONE = { width: 360, height: 740 };
const WIDE = { width: 1280, height: 800 };
/** What still shows a part of the bench to work at, CSS pixels. */
const LEAST_STAGE_PX = 260;

function stageHeight(page: Page): Promise<number> {
  return page.evaluate(() => document.querySelector('.stage')?.getBoundingClientRect().height ?? 0);
}

async function expectRoom(page: Page): Promise<void> {
  const tabs = page.getByRole('tab');
  for (let i = 0; i < (await tabs.count()); i++) {
    await tabs.nth(i).click();
    for (const size of [PHONE, WIDE]) {
      await page.setViewportSize(size);
      await dressed(page, LARGE, async () => {
        const at = `tab ${i} at ${size.width}`;
        expect.soft(await layoutFaults(page), at).toEqual([]);
        expect.soft(await stageHeight(page), at).toBeGreaterThan(LEAST_STAGE_PX);
      });
    }
  }
}

for (const language of ['en', 'es'] as const) {
  test.describe(language, () => {
    test.use({ locale: `${language}-US` });

    test('with letters of twice their size nothing but the drawing goes out of a phone, and the bench is no strip', async ({
      page,
    }) => {
      await page.emulateMedia({ reducedMotion: 'reduce' });
      await page.goto('./?render=canvas#/job/ready-by-friday');
      await page
        .getByRole('button', { name: wordsOf(language)('order.accept') })
        .first()
        .click();
      await page.locator('.stage canvas').waitFor();
      await expectRoom(page);
    });
  });
}
