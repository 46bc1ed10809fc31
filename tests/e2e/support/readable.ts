import { expect, type Page } from '@playwright/test';
import { layoutFaults } from './layoutFaults.ts';

const WIDE = { width: 1280, height: 800 };
/** WCAG 2.2, 1.4.10: 320 CSS pixels, the width of 1280 at 400 %. */
const NARROW = { width: 320, height: 720 };
/** WCAG 2.2, 1.4.12: the four measures of the success criterion. */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;
/** WCAG 2.2, 1.4.4: letters of twice their size. */
const LARGE = 'html { font-size: 200% !important; }';

/** Looks at the page in other styles, once it has had time to follow them, and takes them off again. */
export async function dressed<T>(page: Page, css: string, look: () => Promise<T>): Promise<T> {
  const sheet = await page.addStyleTag({ content: css });
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  const seen = await look();
  await sheet.evaluate((node) => (node as Element).remove());
  return seen;
}

/** The screen is read at 320 pixels, with letters set wide and with letters of twice their size, and nothing on it moves by itself. */
export async function expectReadable(page: Page, name: string): Promise<void> {
  await page.setViewportSize(NARROW);
  expect.soft(await layoutFaults(page), `${name}, at 320 pixels`).toEqual([]);
  await page.setViewportSize(WIDE);
  expect.soft(await dressed(page, SPACED, () => layoutFaults(page)), `${name}, spaced`).toEqual([]);
  expect.soft(await dressed(page, LARGE, () => layoutFaults(page)), `${name}, at 200 %`).toEqual([]);
  const moving = await page.evaluate(() => document.getAnimations().length);
  expect.soft(moving, `${name}, moving by itself`).toBe(0);
}
