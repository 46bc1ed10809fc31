import type { Page } from '@playwright/test';
import { KeyHands } from './support/KeyHands.ts';
import { expect, test } from './support/test.ts';

/** Where the focus is, and whether it can be seen there. */
interface Stop {
  readonly id: string;
  /** Which part of the screen it is in. */
  readonly part: string;
  /** What is wrong with it, if anything. */
  readonly faults: readonly string[];
}

/** Looks at the focused element as a seeing eye would: is any of it uncovered and in the window, is there a mark on it. */
function focusStop(page: Page): Promise<Stop> {
  return page.evaluate(() => {
    const at = document.activeElement;
    if (at === null || at === document.body) return { id: 'page', part: 'page', faults: [] };
    const label = at.getAttribute('aria-label') ?? at.closest('label')?.textContent ?? at.textContent ?? '';
    const group = at.closest('[role=group],[role=radiogroup]')?.querySelector('h3')?.textContent;
    const id = `${group ?? ''} ${at.tagName.toLowerCase()} ${label.trim().slice(0, 40)}`.trim();
    const part =
      at.closest('dialog') !== null
        ? 'dialog'
        : at.closest('header') !== null
          ? 'head'
          : at.closest('.hand-bar') !== null
            ? 'hand bar'
            : at.closest('.stage') !== null
              ? 'bench'
              : at.closest('.side') !== null
                ? 'side'
                : 'other';
    const faults: string[] = [];
    const box = at.getBoundingClientRect();
    const points = [0.5, 0.15, 0.85].flatMap((x) =>
      [0.5, 0.15, 0.85].map((y) => [box.left + box.width * x, box.top + box.height * y] as const),
    );
    const owner = at.closest('label') ?? at;
    const seen = points.some(([x, y]) => {
      const top = document.elementFromPoint(x, y);
      return top !== null && (owner.contains(top) || top.contains(owner));
    });
    // WCAG 2.2, 2.4.11: not entirely hidden. Neither under a bar that stays, nor out of the window.
    if (!seen) faults.push('hidden');
    // WCAG 2.2, 2.4.7: a mark that shows. The box round a choice may bear it instead of the choice.
    const marked = [at, owner, owner.parentElement].some((one) => {
      if (one === null) return false;
      const { outlineStyle, outlineWidth } = getComputedStyle(one);
      return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
    });
    if (!marked) faults.push('no mark');
    return { id, part, faults };
  });
}

/** A move of the view, and a little more. */
const VIEW_MOVES_MS = 500;

/** Tab through everything once, from where the focus is until it comes there again or leaves the page. */
async function roundByTab(page: Page, most = 90): Promise<Stop[]> {
  const stops: Stop[] = [];
  for (let i = 0; i < most; i++) {
    await page.keyboard.press('Tab');
    let stop = await focusStop(page);
    if (stop.faults.length > 0) {
      // On a small screen the view of the bench goes to what has the focus.
      await page.waitForTimeout(VIEW_MOVES_MS);
      stop = await focusStop(page);
    }
    if (stops.length > 3 && stop.id === stops[0]?.id) return stops;
    stops.push(stop);
  }
  throw new Error(`the focus never came round: ${stops.map(({ id }) => id).join(' | ')}`);
}

const wrong = (stops: readonly Stop[]): string[] =>
  stops.flatMap(({ id, faults }) => faults.map((fault) => `${fault}: ${id}`));

async function atTheBench(page: Page): Promise<void> {
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await page.getByRole('button', { name: 'Take the job' }).click();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
}

const THEMES = [
  { name: 'light', media: { colorScheme: 'light', contrast: 'no-preference', forcedColors: 'none' } },
  { name: 'dark', media: { colorScheme: 'dark', contrast: 'no-preference', forcedColors: 'none' } },
  {
    name: 'forced colours',
    media: { colorScheme: 'light', contrast: 'no-preference', forcedColors: 'active' },
  },
] as const;

test('the focus goes round in the order of the work, is seen wherever it is, and nothing holds it', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await atTheBench(page);
  const round = await roundByTab(page);
  expect(wrong(round)).toEqual([]);
  // From the bench over what is under it to the evidence; the page's own head comes round at the end.
  const parts = round
    .map(({ part }) => part)
    .filter((part) => ['bench', 'hand bar', 'side'].includes(part))
    .filter((part, i, all) => part !== all[i - 1]);
  expect(parts.slice(0, 3)).toEqual(['bench', 'hand bar', 'side']);
  expect(parts.filter((part) => part === 'bench').length).toBeLessThanOrEqual(2);
  const groups = [
    'Battery, fuse and grounds',
    'Key',
    'Plug',
    'Hand pump and gauge',
    'Pump handle',
    'Meter and its leads',
    'Meter selector',
  ];
  const met = round
    .map(({ id }) => groups.find((group) => id.startsWith(group)))
    .filter((group) => group !== undefined);
  expect([...new Set(met)]).toEqual([...groups.filter((group) => met.includes(group))]);
  expect(new Set(met).size).toBeGreaterThanOrEqual(6);

  for (const { name, media } of THEMES.slice(1)) {
    await page.emulateMedia(media);
    expect(wrong(await roundByTab(page)), name).toEqual([]);
  }
  await page.emulateMedia(THEMES[0].media);
  await page.setViewportSize({ width: 390, height: 780 });
  expect(wrong(await roundByTab(page)), 'on a narrow screen').toEqual([]);
});

test('every dialog holds the focus while it is open, lets it go by Escape, and gives it back', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await atTheBench(page);
  const hands = new KeyHands(page);
  await hands.log();
  await hands.open('Suspects');
  await expect(page.getByRole('button', { name: 'Fuse undecided' })).toBeVisible();
  for (const opener of [
    'Parts cupboard',
    'Road test',
    'Give a verdict',
    'Settings',
    'Keys (?)',
    'Fuse undecided',
  ]) {
    const button = page.getByRole('button', { name: opener, exact: true });
    await button.focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog');
    await expect(dialog).toBeVisible();
    await expect
      .poll(() => dialog.evaluate((one) => one.contains(document.activeElement)), opener)
      .toBe(true);
    const round = await roundByTab(page);
    expect(wrong(round), opener).toEqual([]);
    expect(new Set(round.map(({ part }) => part).filter((part) => part !== 'page')), opener).toEqual(
      new Set(['dialog']),
    );
    await page.keyboard.press('Escape');
    await expect(dialog).toHaveCount(0);
    await expect(button, opener).toBeFocused();
  }
});

test('after a drive by keys the focus is on the heading of what it showed', async ({ page }) => {
  test.setTimeout(180_000);
  await atTheBench(page);
  await page.getByRole('button', { name: 'Road test', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Drive 2 cycles' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'The last drive' })).toBeFocused({ timeout: 90_000 });
  // The stop after it is in the dialog still.
  await page.keyboard.press('Tab');
  expect((await focusStop(page)).part).toMatch(/dialog|page/);
});

test('a focus that is covered or unmarked would be found', async ({ page }) => {
  await page.goto('./?render=canvas');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.keyboard.press('Tab');
  expect((await focusStop(page)).faults).toEqual([]);
  await page.addStyleTag({
    content:
      ':focus-visible { outline: none !important } body::after { content: ""; position: fixed; inset: 0; background: #fff }',
  });
  expect((await focusStop(page)).faults).toContain('no mark');
});
