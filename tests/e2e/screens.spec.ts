import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import { everyScreen, guidedScreens, type Look } from './support/everyScreen.ts';
import { expectReadable } from './support/readable.ts';
import { expect, test } from './support/test.ts';
import { wordsOf } from './support/words.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.0 to 2.2, levels A and AA, and what axe calls best practice. */
const ALL_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Rules whose answer may be another in another dress of the same page. */
const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

interface Axe {
  run(where: Document, how: object): Promise<{ violations: Finding[]; passes: Finding[] }>;
}

/** What axe finds wrong on the page as it stands, one line for each place. */
async function findings(page: Page, rules: readonly string[] | null = null): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(AXE);
  const violations = await page.evaluate(
    async ({ rules, tags }) => {
      const { axe } = globalThis as unknown as { axe: Axe };
      const runOnly = rules === null ? { type: 'tag', values: tags } : { type: 'rule', values: rules };
      return (await axe.run(document, { runOnly, resultTypes: ['violations'] })).violations;
    },
    { rules, tags: ALL_TAGS },
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary = '' }) => `${id}: ${html} ${failureSummary.replace(/\s+/g, ' ')}`),
  );
}

const DRESSES = [
  { name: 'dark', media: { colorScheme: 'dark', contrast: 'no-preference' } },
  { name: 'high contrast', media: { colorScheme: 'light', contrast: 'more' } },
] as const;
const LIGHT = { colorScheme: 'light', contrast: 'no-preference' } as const;

test('on no screen axe finds anything, light, dark and in high contrast, and every screen is read narrow, spaced and large', async ({
  page,
}) => {
  test.setTimeout(240_000);
  let looks = 0;
  await page.emulateMedia({ ...LIGHT, reducedMotion: 'reduce' });
  await page.goto('./?render=canvas');
  const look: Look = async (name) => {
    looks += 1;
    expect.soft(await findings(page), name).toEqual([]);
    for (const dress of DRESSES) {
      await page.emulateMedia(dress.media);
      await page.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
      );
      expect.soft(await findings(page, COLOUR_RULES), `${name}, ${dress.name}`).toEqual([]);
    }
    await page.emulateMedia(LIGHT);
    await expectReadable(page, name);
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
      expect.soft(await findings(page), name).toEqual([]);
      await expectReadable(page, name);
    };
    await everyScreen(page, wordsOf('es'), look);
    await guidedScreens(page, wordsOf('es'), look);
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
  const found = await findings(page);
  expect(found.some((finding) => finding.startsWith('image-alt'))).toBe(true);
  expect(found.some((finding) => finding.startsWith('color-contrast'))).toBe(true);
});
