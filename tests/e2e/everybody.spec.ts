import { contrast, type Rgb } from '../ui/theme/support/contrast.ts';
import { layoutFaults } from './support/layoutFaults.ts';
import { dressed } from './support/readable.ts';
import { takeShot } from './support/shot.ts';
import { expect, test } from './support/test.ts';

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
    // Behind words in forced colours the browser lays a plate of the page's ground, but where a page has them adjusted by itself.
    const words = await page.evaluate(() =>
      [...document.querySelectorAll('button:not(.spot), .caption, h1, p')]
        .filter((one) => one.checkVisibility() && (one.textContent ?? '').trim() !== '')
        .map((one) => {
          const { color, forcedColorAdjust } = getComputedStyle(one);
          let ground = '';
          for (let box: Element | null = one; box !== null && ground === ''; box = box.parentElement) {
            const { backgroundColor } = getComputedStyle(box);
            if (!/, 0\)$|transparent/.test(backgroundColor)) ground = backgroundColor;
          }
          return { what: one.textContent, color, ground, plate: forcedColorAdjust === 'auto' };
        }),
    );
    expect(words.length).toBeGreaterThan(15);
    const ratio = (a: string, b: string): number => contrast(channels(a), channels(b));
    expect(ratio(seen.page, colorScheme === 'dark' ? 'rgb(0, 0, 0)' : 'rgb(255, 255, 255)')).toBeLessThan(
      1.2,
    );
    expect(ratio(seen.chosen, seen.other), 'the chosen tab from another').toBeGreaterThanOrEqual(3);
    expect(ratio(seen.chosenWords, seen.chosen)).toBeGreaterThanOrEqual(4.5);
    expect(ratio(seen.wire, seen.ground), 'a wire of the circuit').toBeGreaterThanOrEqual(4.5);
    expect(ratio(seen.letters, seen.ground), 'its letters').toBeGreaterThanOrEqual(4.5);
    const lost = words.filter(({ color, ground, plate }) => ratio(color, plate ? seen.page : ground) < 4.5);
    expect(lost).toEqual([]);
  });
}

function channels(css: string): Rgb {
  const [r, g, b] = (css.match(/\d+(\.\d+)?/g) ?? []).map(Number);
  if (r === undefined || g === undefined || b === undefined) throw new Error(`not a colour: ${css}`);
  return [r, g, b];
}
