import type { Page } from '@playwright/test';
import { contrast, type Rgb } from '../ui/theme/support/contrast.ts';
import { everyScreen } from './support/everyScreen.ts';
import { layoutFaults } from './support/layoutFaults.ts';
import { takeShot } from './support/shot.ts';
import { expect, test } from './support/test.ts';
import { wordsOf } from './support/words.ts';

const WIDE = { width: 1280, height: 800 };
/** WCAG 2.2, 1.4.10: 320 CSS pixels, the width of 1280 at 400 %. */
const NARROW = { width: 320, height: 720 };

/** WCAG 2.2, 1.4.12: the four measures of the success criterion. */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;
/** WCAG 2.2, 1.4.4: letters of twice their size. */
const LARGE = 'html { font-size: 200% !important; }';

async function dressed<T>(page: Page, css: string, look: () => Promise<T>): Promise<T> {
  const sheet = await page.addStyleTag({ content: css });
  const seen = await look();
  await sheet.evaluate((node) => (node as Element).remove());
  return seen;
}

test('every screen is read at 320 pixels, with letters set wide, and with letters of twice their size', async ({
  page,
}) => {
  test.setTimeout(240_000);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('./?render=canvas');
  await everyScreen(page, wordsOf('en'), async (name) => {
    await page.setViewportSize(NARROW);
    expect.soft(await layoutFaults(page), `${name}, at 320 pixels`).toEqual([]);
    await page.setViewportSize(WIDE);
    expect.soft(await dressed(page, SPACED, () => layoutFaults(page)), `${name}, spaced`).toEqual([]);
    expect.soft(await dressed(page, LARGE, () => layoutFaults(page)), `${name}, at 200 %`).toEqual([]);
    const moving = await page.evaluate(() => document.getAnimations().length);
    expect.soft(moving, `${name}, moving by itself`).toBe(0);
  });
});

test('what is cut off or out of the window would be found', async ({ page }) => {
  await page.goto('./?render=canvas');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await layoutFaults(page)).toEqual([]);
  const cut = await dressed(page, 'h1 { width: 20px; overflow: hidden; white-space: nowrap; }', () =>
    layoutFaults(page),
  );
  expect(cut.join('\n')).toMatch(/cuts off/);
  const wide = await dressed(page, 'h1 { position: relative; left: 1270px; white-space: nowrap; }', () =>
    layoutFaults(page),
  );
  expect(wide.join('\n')).toMatch(/out of the window|the page is/);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`in forced colours, ${colorScheme}: what is chosen is marked, and drawings stand out from the ground`, async ({
    page,
  }, info) => {
    await page.emulateMedia({ forcedColors: 'active', colorScheme, reducedMotion: 'reduce' });
    await page.goto('./?render=canvas');
    await page.getByRole('button', { name: /Ready by Friday/ }).click();
    await page.getByRole('button', { name: 'Take the job' }).click();
    await expect(page.getByRole('tab', { name: 'Service data' })).toBeVisible({ timeout: 30_000 });
    await page.getByRole('tab', { name: 'Service data' }).click();
    const circuit = page.locator('.circuit');
    await expect(circuit).toBeVisible();
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'high-contrast');
    const seen = await page.evaluate(() => {
      const style = (selector: string) => {
        const one = document.querySelector(selector);
        if (one === null) throw new Error(`nothing is ${selector}`);
        return getComputedStyle(one);
      };
      return {
        chosen: style('.tabs [aria-selected=true]').backgroundColor,
        chosenWords: style('.tabs [aria-selected=true]').color,
        other: style('.tabs [aria-selected=false]').backgroundColor,
        wire: style('.circuit .wire').stroke,
        letters: style('.circuit text').fill,
        ground: style('.circuit').backgroundColor,
        page: style('body').backgroundColor,
      };
    });
    await takeShot(page, info, `forced-${colorScheme}`);
    const ratio = (a: string, b: string): number => contrast(channels(a), channels(b));
    expect(ratio(seen.page, colorScheme === 'dark' ? 'rgb(0, 0, 0)' : 'rgb(255, 255, 255)')).toBeLessThan(
      1.2,
    );
    expect(ratio(seen.chosen, seen.other), 'the chosen tab from another').toBeGreaterThanOrEqual(3);
    expect(ratio(seen.chosenWords, seen.chosen)).toBeGreaterThanOrEqual(4.5);
    expect(ratio(seen.wire, seen.ground), 'a wire of the circuit').toBeGreaterThanOrEqual(4.5);
    expect(ratio(seen.letters, seen.ground), 'its letters').toBeGreaterThanOrEqual(4.5);
  });
}

function channels(css: string): Rgb {
  const [r, g, b] = (css.match(/\d+(\.\d+)?/g) ?? []).map(Number);
  if (r === undefined || g === undefined || b === undefined) throw new Error(`not a colour: ${css}`);
  return [r, g, b];
}
