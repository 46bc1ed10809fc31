import type { Locator, Page } from '@playwright/test';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

const JOB = /Ready by Friday/;

async function atTheBench(page: Page): Promise<void> {
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: JOB }).first().click();
  await takeTheJob(page, new PointerHands(page));
  // Its controls lie over it from its first drawing on.
  await expect(control(page, 'Red lead')).toBeVisible();
}

function control(page: Page, name: string): Locator {
  return page
    .getByRole('region', { name: 'Bench' })
    .getByRole('button', { name: new RegExp(`^${name}`) })
    .first();
}

function undoButton(page: Page): Locator {
  return page.locator('button.undo');
}

function caption(page: Page): Locator {
  return page.locator('.caption');
}

async function middle(one: Locator): Promise<{ x: number; y: number }> {
  const box = await one.boundingBox();
  if (box === null) throw new Error('it is not on the page');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('what a hand did goes back by the button and by Ctrl+Z, and what stays done says why', async ({
  page,
}) => {
  await atTheBench(page);
  await expect(undoButton(page)).toHaveAccessibleName('Undo. Nothing to undo.');
  await control(page, 'Red lead').click();
  await control(page, 'Battery positive').click();
  await control(page, 'Plug, mated').click();
  await expect(undoButton(page)).toHaveAccessibleName('Undo: plug mated again');
  await undoButton(page).click();
  await expect(control(page, 'Plug, mated')).toBeVisible();
  await expect(caption(page)).toHaveText('Put back: plug mated again.');
  await expect(undoButton(page), 'the focus stays where it was').toBeFocused();
  await page.getByRole('button', { name: 'Full stroke' }).click();
  await expect(undoButton(page)).toHaveAccessibleName(
    /^Strokes are not undone: .* Undo: red lead off again$/,
  );
  await page.keyboard.press('Control+z');
  await expect(control(page, 'Red lead, loose')).toBeVisible();
  await expect(undoButton(page)).toHaveAttribute('aria-disabled', 'true');
  await page.keyboard.press('Control+z');
  await expect(caption(page)).toHaveText('Nothing to undo.');
});

test('a thing that is carried goes back by Ctrl+Z, by Escape, and when it is let go off the bench', async ({
  page,
}) => {
  await atTheBench(page);
  const lead = await middle(control(page, 'Red lead'));
  const battery = await middle(control(page, 'Battery positive'));
  for (const giveUp of [
    () => page.keyboard.press('Escape'),
    () => page.keyboard.press('Control+z'),
    () => page.mouse.move(640, 2, { steps: 4 }),
  ]) {
    await page.mouse.move(lead.x, lead.y);
    await page.mouse.down();
    await page.mouse.move(battery.x, battery.y, { steps: 5 });
    await expect(caption(page)).toContainText('Red lead in hand');
    await giveUp();
    await page.mouse.up();
    await expect(caption(page)).toHaveText('Red lead put back.');
    await expect(control(page, 'Red lead, loose')).toBeVisible();
  }
});

test('every stroke that is asked for is made, however fast', async ({ page }) => {
  await atTheBench(page);
  const handle = page.getByRole('slider', { name: 'Pump handle' });
  const full = page.getByRole('button', { name: 'Full stroke' });
  await page.evaluate(() => {
    const slider = document.querySelector('[data-spot="pump-handle"]');
    const seen = { strokes: 0, out: false };
    Object.assign(window, { seen });
    new MutationObserver(() => {
      const out = Number(slider?.getAttribute('aria-valuenow')) > 40;
      if (out && !seen.out) seen.strokes += 1;
      seen.out = out;
    }).observe(slider as Element, { attributes: true });
  });
  for (let i = 0; i < 3; i++) await full.click();
  await expect(caption(page)).not.toContainText('still moving');
  await expect.poll(() => page.evaluate('seen.strokes'), { timeout: 10_000 }).toBe(3);
  await expect(handle).toHaveAttribute('aria-valuenow', '0');
});

test.describe('with fingers', () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 1180, height: 820 } });

  /** Fingers as the browser gets them from a screen. */
  async function fingers(page: Page) {
    const screen = await page.context().newCDPSession(page);
    const send = (
      type: 'touchStart' | 'touchMove' | 'touchEnd',
      points: readonly { x: number; y: number }[],
    ) =>
      screen.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: points.map(({ x, y }, id) => ({ x, y, id })),
      });
    return {
      send,
      async drag(from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> {
        await send('touchStart', [from]);
        for (let i = 1; i <= 8; i++) {
          const share = i / 8;
          await send('touchMove', [
            { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share },
          ]);
        }
        await send('touchEnd', []);
      },
    };
  }

  async function tap(page: Page, one: Locator): Promise<void> {
    const { x, y } = await middle(one);
    await page.touchscreen.tap(x, y);
  }

  /** A finger's press on a thing of the bench; where it lies close to others, which one was meant. */
  async function touch(page: Page, name: string): Promise<void> {
    await tap(page, control(page, name));
    const choice = page.getByRole('dialog', { name: 'Which one?' });
    const asked = await choice.waitFor({ timeout: 1500 }).then(
      () => true,
      () => false,
    );
    if (asked) await tap(page, choice.getByRole('button', { name: new RegExp(`^${name}`) }));
  }

  async function leadsByTaps(page: Page): Promise<void> {
    await atTheBench(page);
    await touch(page, 'Red lead');
    const place = page.getByRole('option', { name: /^Battery positive/ });
    await place.scrollIntoViewIfNeeded();
    await tap(page, place);
    await expect(caption(page)).toHaveText('Red lead placed on battery positive.');
    await touch(page, 'Black lead');
    await touch(page, 'Controller end of the feed wire');
    await expect(caption(page)).toHaveText('Black lead placed on controller end of the feed wire.');
    await tap(page, undoButton(page));
    await expect(caption(page)).toHaveText('Put back: black lead off again.');
  }

  test('a lead goes by a tap and a tap, from the list and on the bench', ({ page }) => leadsByTaps(page));

  test('it does where the browser does not say with a click what made it', async ({ page }) => {
    // As before clicks became pointer events (W3C, Pointer Events 3): only what a pointer itself does is one.
    await page.addInitScript(() => {
      Object.defineProperty(PointerEvent, Symbol.hasInstance, {
        value: (one: unknown) => one instanceof MouseEvent && one.type.startsWith('pointer'),
      });
    });
    await leadsByTaps(page);
  });

  test('a finger that carries moves no page, one finger has the hand, and a long press asks for no menu', async ({
    page,
  }) => {
    await atTheBench(page);
    const { send, drag } = await fingers(page);
    await page.evaluate(() => {
      document.body.style.minHeight = '300vh';
      window.addEventListener('pointercancel', () => document.body.setAttribute('data-cancelled', ''));
    });
    await drag(await middle(control(page, 'Red lead')), await middle(control(page, 'Battery positive')));
    await expect(caption(page)).toHaveText('Red lead placed on battery positive.');
    // By its tip, which lies on a place and not on a handle.
    await drag(
      await middle(control(page, 'Battery positive')),
      await middle(control(page, 'Fuse, battery side')),
    );
    await expect(caption(page)).toHaveText('Red lead placed on fuse, battery side.');
    expect(await page.evaluate(() => window.scrollY)).toBe(0);
    await expect(page.locator('body')).not.toHaveAttribute('data-cancelled');

    const lead = await middle(control(page, 'Black lead'));
    const pump = await middle(page.getByRole('slider', { name: 'Pump handle' }));
    const carried = { x: lead.x, y: lead.y - 60 };
    await send('touchStart', [lead]);
    await send('touchMove', [carried]);
    await send('touchStart', [carried, pump]);
    await send('touchMove', [carried, { x: pump.x + 60, y: pump.y }]);
    await expect(page.getByRole('slider', { name: 'Pump handle' })).toHaveAttribute('aria-valuenow', '0');
    await expect(caption(page)).toContainText('Black lead in hand');
    await send('touchEnd', []);

    const menu = await control(page, 'Red lead').evaluate((one) => {
      const asked = new PointerEvent('contextmenu', {
        pointerType: 'touch',
        bubbles: true,
        cancelable: true,
      });
      one.dispatchEvent(asked);
      return !asked.defaultPrevented;
    });
    expect(menu).toBe(false);
  });
});

test('sounds that cannot be played stop nothing, and the settings say so in one sentence', async ({
  page,
}) => {
  await page.addInitScript(() => {
    // The files come, and the browser can make nothing of them.
    BaseAudioContext.prototype.decodeAudioData = (_file: ArrayBuffer) =>
      Promise.reject(new DOMException('not a sound', 'EncodingError'));
  });
  await atTheBench(page);
  await page.getByRole('radio', { name: 'On', exact: true }).first().click();
  await control(page, 'Red lead').click();
  await control(page, 'Battery positive').click();
  await page.getByRole('button', { name: 'Full stroke' }).click();
  await expect(caption(page)).toHaveText('Red lead placed on battery positive.');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await page.getByRole('button', { name: 'Settings' }).click();
  await expect(page.getByText('This browser gives no sound.')).toHaveCount(1);
});
