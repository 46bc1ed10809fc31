import { test as bare, expect } from '@playwright/test';
import { tokensOf } from '../../src/ui/theme/tokens.ts';

for (const [colorScheme, theme] of [
  ['light', 'paper'],
  ['dark', 'shop-floor'],
] as const)
  bare(`while nothing has come yet the page has its ground and says so, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    let letGo = (): void => {};
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    // Neither style sheet nor script: a network that is slow behind the first answer.
    await page.route(/\.(css|js)$/, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto('./?render=canvas', { waitUntil: 'commit' });
    const loading = page.getByText('Loading …');
    await expect(loading).toBeVisible();
    const ground = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    const hex = `#${(ground.match(/\d+/g) ?? []).map((one) => Number(one).toString(16).padStart(2, '0')).join('')}`;
    expect(hex.toUpperCase()).toBe(tokensOf(theme).paper.toUpperCase());
    // It is drawn, not only computed: the sheets that are still out hold nothing back.
    expect(await page.evaluate(() => performance.getEntriesByType('paint').length)).toBeGreaterThan(0);
    letGo();
    await expect(page.getByRole('heading', { level: 1, name: 'Job board' })).toBeVisible();
    await expect(loading).toBeHidden();
    expect(await page.evaluate(() => document.styleSheets.length)).toBeGreaterThan(1);
  });
