import type { Page } from '@playwright/test';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

/** WCAG 2.2, success criterion 2.5.8: 24 CSS pixels each way, or a 24 px circle that meets nothing else's, or an equivalent that is. */
const LEAST_PX = 24;
/** Things that mean something to an empty hand: a press on them must do what it says, or ask. */
const WORKED =
  /^(end|fitting|clamp|cavity-pin|key-position|meter-selector|meter-jack|meter-key|shelf|fuse|plug|supply-switch|pin-tray|pump-release)/;

interface Seen {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  /** A press on its middle comes to it and to nothing that lies over it. */
  readonly reached: boolean;
}

/** Every control of the bench that is wholly in sight, as the browser laid it. */
async function inSight(page: Page): Promise<readonly Seen[]> {
  return page.evaluate(() => {
    const stage = document.querySelector('.stage')?.getBoundingClientRect();
    if (stage === undefined) throw new Error('no stage');
    return [...document.querySelectorAll<HTMLElement>('.stage [data-spot]')].flatMap((spot) => {
      const box = spot.getBoundingClientRect();
      const inside =
        box.left >= stage.left &&
        box.right <= stage.right &&
        box.top >= stage.top &&
        box.bottom <= stage.bottom;
      if (!inside) return [];
      const at = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
      const place = { x: box.left, y: box.top, w: box.width, h: box.height };
      return [{ id: spot.dataset['spot'] ?? '', ...place, reached: at === spot }];
    });
  });
}

function crowded(spots: readonly Seen[]): readonly Seen[] {
  const middle = (spot: Seen) => ({ x: spot.x + spot.w / 2, y: spot.y + spot.h / 2 });
  const small = (spot: Seen): boolean => Math.min(spot.w, spot.h) < LEAST_PX - 0.05;
  return spots.filter((spot) => {
    if (!small(spot)) return false;
    const { x, y } = middle(spot);
    return spots.some((other) => {
      if (other === spot) return false;
      const dx = Math.max(other.x - x, 0, x - (other.x + other.w));
      const dy = Math.max(other.y - y, 0, y - (other.y + other.h));
      const far = middle(other);
      return (
        Math.hypot(dx, dy) < LEAST_PX / 2 - 0.05 ||
        (small(other) && Math.hypot(far.x - x, far.y - y) < LEAST_PX - 0.05)
      );
    });
  });
}

async function open(page: Page, width: number, height: number): Promise<void> {
  await page.setViewportSize({ width, height });
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await page.goto('./');
  await page.getByRole('button', { name: /First day on the bench/ }).click();
  await takeTheJob(page, new PointerHands(page));
}

const VIEWS = ['Bench', 'Power', 'Ports', 'Plug', 'Meter', 'Pump', 'Tools'];

async function go(page: Page, view: string): Promise<void> {
  const button = page.getByRole('toolbar', { name: 'Views of the bench' }).getByRole('button', {
    name: view,
    exact: true,
  });
  await button.click();
  await expect(button).toHaveAttribute('aria-pressed', 'true');
  // One frame, in which a view that does not move is there.
  await page.waitForTimeout(120);
}

for (const [width, height] of [
  [1280, 800],
  [1024, 768],
  [768, 1024],
  [360, 740],
] as const) {
  test(`targets are large, apart, or asked about, in every view of a window of ${width} by ${height}`, async ({
    page,
  }) => {
    await open(page, width, height);
    for (const view of VIEWS) {
      await go(page, view);
      const spots = await inSight(page);
      expect(spots.length, view).toBeGreaterThan(5);
      expect(
        spots.filter(({ reached }) => !reached),
        view,
      ).toEqual([]);
      const tight = crowded(spots);
      // Close up nothing is left to ask about. A phone's meter view, which has the meter's loose leads in it too, shows at its edge
      // the wires that the plug's view shows large.
      const elsewhere = ({ id }: Seen): boolean =>
        width < 600 && view === 'Meter' && id.startsWith('point:wire-');
      if (view !== 'Bench')
        expect(
          tight.filter((spot) => !elsewhere(spot)),
          view,
        ).toEqual([]);
      for (const spot of tight.filter(({ id }) => WORKED.test(id)).slice(0, 6)) {
        await page.mouse.click(spot.x + spot.w / 2, spot.y + spot.h / 2);
        const choice = page.getByRole('dialog', { name: 'Which one?' });
        await expect(choice, spot.id).toBeVisible();
        const same = await choice.locator(`[data-meant="${spot.id}"]`).boundingBox();
        expect(Math.min(same?.width ?? 0, same?.height ?? 0), spot.id).toBeGreaterThanOrEqual(LEAST_PX);
        await page.keyboard.press('Escape');
        await expect(choice).toBeHidden();
      }
    }
    const bar = page.getByRole('toolbar', { name: 'Views of the bench' }).getByRole('button');
    for (const box of await Promise.all((await bar.all()).map((button) => button.boundingBox())))
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(width < 600 ? 44 : LEAST_PX);
    // Nothing but the bench in its frame goes two ways.
    const page2d = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(page2d).toBeLessThanOrEqual(0);
  });
}

test('a small place is chosen large, and the lead then lies there', async ({ page }) => {
  await open(page, 390, 844);
  await go(page, 'Meter');
  await page.locator('[data-spot="meter-jack:volts"]').click();
  await go(page, 'Bench');
  await page.locator('[data-spot="end:meter-red"]').click();
  await page.getByRole('dialog', { name: 'Which one?' }).locator('[data-meant="end:meter-red"]').click();
  await page.locator('[data-spot="point:battery-positive"]').click();
  const choice = page.getByRole('dialog', { name: 'Which one?' });
  await choice.getByRole('button', { name: 'Battery positive' }).click();
  await expect(page.locator('[data-spot="end:meter-red"]')).toHaveAccessibleName(
    'Red lead, on battery positive',
  );
});

test.describe('with a finger', () => {
  test.use({ hasTouch: true, isMobile: true });

  test('a thing that is let go among small places is asked about, and goes there or back', async ({
    page,
  }) => {
    await open(page, 390, 844);
    await go(page, 'Bench');
    const screen = await page.context().newCDPSession(page);
    const middle = async (id: string): Promise<{ x: number; y: number }> => {
      const box = await page.locator(`[data-spot="${id}"]`).boundingBox();
      if (box === null) throw new Error(`no ${id}`);
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    };
    const carry = async (thing: string, to: string): Promise<void> => {
      const [from, goal] = [await middle(thing), await middle(to)];
      await screen.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [from] });
      for (const share of [0.3, 0.6, 1]) {
        const at = { x: from.x + (goal.x - from.x) * share, y: from.y + (goal.y - from.y) * share };
        await screen.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [at] });
      }
      await screen.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    const choice = page.getByRole('dialog', { name: 'Which one?' });
    const lead = page.locator('[data-spot="end:meter-red"]');
    await carry('end:meter-red', 'point:battery-positive');
    await choice.getByRole('button', { name: 'None of these' }).tap();
    await expect(lead).toHaveAccessibleName(/^Red lead, loose/);
    await carry('end:meter-red', 'point:battery-positive');
    await choice.getByRole('button', { name: 'Battery negative' }).tap();
    await expect(lead).toHaveAccessibleName('Red lead, on battery negative');
    await expect(choice).toBeHidden();
  });
});

test('on a phone the log key, the meter and the gauge stay at the lower edge, and hide nothing that has the focus', async ({
  page,
}) => {
  await open(page, 360, 740);
  const dock = page.locator('.dock');
  const top = async (one: string): Promise<number> => (await page.locator(one).boundingBox())?.y ?? 0;
  // The whole bench with its keys is in sight above it.
  expect((await page.locator('.stage').boundingBox())?.height).toBeGreaterThan(300);
  expect(await top('.stage')).toBeGreaterThanOrEqual(0);
  const help = await page.locator('.help').boundingBox();
  expect((help?.y ?? 999) + (help?.height ?? 0)).toBeLessThanOrEqual(await top('.dock'));
  for (const far of [0, 5000]) {
    await page.evaluate((y) => window.scrollTo(0, y), far);
    await expect(dock.getByRole('button', { name: 'Log this reading' })).toBeInViewport({ ratio: 1 });
    await expect(dock.locator('.small-meter')).toBeInViewport({ ratio: 1 });
  }
  await page.locator('.help').focus();
  for (let press = 0; press < 40; press += 1) {
    await page.keyboard.press('Tab');
    const hidden = await page.evaluate(() => {
      const one = document.activeElement;
      const dockTop = document.querySelector('.dock')?.getBoundingClientRect().top ?? 0;
      if (one === null || one === document.body || one.closest('.dock') !== null) return null;
      const { top: from, bottom } = one.getBoundingClientRect();
      // A panel that is higher than the window shows its upper part.
      return bottom > dockTop + 1 && from > 0 && one.id !== 'side-panel' ? one.outerHTML.slice(0, 80) : null;
    });
    expect(hidden).toBeNull();
  }
});

test('a key brings what it comes to into sight', async ({ page }) => {
  await open(page, 1280, 800);
  await go(page, 'Meter');
  const key = page.getByRole('radiogroup', { name: 'Key' }).getByRole('radio', { checked: true });
  const stage = await page.locator('.stage').boundingBox();
  const top = async (): Promise<number> => (await key.boundingBox())?.x ?? 0;
  expect(await top()).toBeLessThan(stage?.x ?? 0);
  await page.locator('.stage').focus();
  for (let press = 0; press < 4 && !(await key.evaluate((it) => it === document.activeElement)); press += 1)
    await page.keyboard.press('Tab');
  await expect(key).toBeFocused();
  await expect.poll(top).toBeGreaterThanOrEqual(stage?.x ?? 0);
});

test('the view is moved by number, by a double press on the mat, by the wheel and by a drag', async ({
  page,
}) => {
  await open(page, 1280, 800);
  const bar = page.getByRole('toolbar', { name: 'Views of the bench' });
  const pressed = (name: string) => bar.getByRole('button', { name, exact: true, pressed: true });
  await expect(pressed('Bench')).toBeVisible();
  await page.keyboard.press('3');
  await expect(pressed('Plug')).toBeVisible();
  await page.keyboard.press('0');
  await expect(pressed('Bench')).toBeVisible();
  await page.waitForTimeout(120);
  const lcd = await page.locator('[data-spot="lcd"]').boundingBox();
  if (lcd === null) throw new Error('no window');
  await page.mouse.dblclick(lcd.x + lcd.width / 2, lcd.y + lcd.height / 2);
  await expect(pressed('Meter')).toBeVisible();
  await page.waitForTimeout(120);
  const stage = await page.locator('.stage').boundingBox();
  if (stage === null) throw new Error('no stage');
  const before = await page.locator('[data-spot="lcd"]').boundingBox();
  // Bare mat, left of the meter.
  await page.mouse.move(stage.x + 60, stage.y + stage.height - 60);
  await page.mouse.down();
  await page.mouse.move(stage.x + 200, stage.y + stage.height - 100, { steps: 4 });
  await page.mouse.up();
  const after = await page.locator('[data-spot="lcd"]').boundingBox();
  expect((after?.x ?? 0) - (before?.x ?? 0)).toBeGreaterThan(100);
  await expect(bar.getByRole('button', { pressed: true })).toHaveCount(0);
  await page.keyboard.down('Control');
  await page.mouse.wheel(0, 900);
  await page.keyboard.up('Control');
  await expect(pressed('Bench')).toBeVisible();
});
