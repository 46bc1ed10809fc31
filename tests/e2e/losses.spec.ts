import { test as bare, type Page } from '@playwright/test';
import { Announcements } from './support/Announcements.ts';
import { logBattery } from './support/logBattery.ts';
import { MirrorHands } from './support/MirrorHands.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeShot } from './support/shot.ts';
import { expect, test } from './support/test.ts';

// What a browser may refuse or lose. Each time the job goes on, and one sentence says what is lost, if anything is.

const bench = (page: Page) => page.getByRole('region', { name: 'Bench', exact: true });
const log = (page: Page) => page.getByRole('table', { name: 'Log' });

async function takeReadyByFriday(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await page.getByRole('button', { name: 'Take the job' }).click();
  await expect(page.getByRole('tab', { name: 'Log', exact: true })).toBeVisible({ timeout: 30_000 });
}

/** The meter on the battery by the controls' names alone, logged: entry 1. */
async function proveTheMeter(page: Page): Promise<void> {
  const hands = new MirrorHands(page, new Announcements(page));
  await hands.open('Log');
  await logBattery(hands);
  await expect(log(page)).toContainText(/12\.[4-8]\d V/);
}

/** How many colours the drawing has. A bench that is not drawn has one. */
async function colours(page: Page): Promise<number> {
  return bench(page)
    .locator('canvas')
    .evaluate((drawn) => {
      const small = document.createElement('canvas');
      small.width = 304;
      small.height = 220;
      const pen = small.getContext('2d');
      if (pen === null) return 0;
      pen.drawImage(drawn as HTMLCanvasElement, 0, 0, small.width, small.height);
      const { data } = pen.getImageData(0, 0, small.width, small.height);
      const seen = new Set<number>();
      for (let i = 0; i < data.length; i += 4) {
        seen.add(((data[i] ?? 0) << 16) | ((data[i + 1] ?? 0) << 8) | (data[i + 2] ?? 0));
      }
      return seen.size;
    });
}

const DRAWN = 40;

test('the graphics go away in mid-job: the bench is drawn the simple way, and nothing is lost', async ({
  page,
}) => {
  await takeReadyByFriday(page, './?render=webgl');
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  await proveTheMeter(page);
  const lost = await bench(page)
    .locator('canvas')
    .evaluate((drawn) => {
      const context = (drawn as HTMLCanvasElement).getContext('webgl2');
      context?.getExtension('WEBGL_lose_context')?.loseContext();
      return context !== null;
    });
  expect(lost, 'it was drawn by WebGL').toBe(true);
  await expect(page.getByRole('alert')).toContainText(
    'The graphics of this device went away for a moment. The bench is drawn the simple way now; nothing is lost.',
  );
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  await expect(bench(page).locator('canvas')).toHaveCount(1);
  await expect(bench(page).getByRole('button', { name: /^Red lead, on battery positive/ })).toBeAttached();
  await expect(log(page)).toContainText(/12\.[4-8]\d V/);
  // Hands still meet what they see.
  const hands = new PointerHands(page);
  await hands.choose('Key', 'On');
  await hands.log();
  await expect(log(page)).toContainText('key on');
});

test('without WebGL the bench is drawn the simple way, and nobody is bothered', async ({ page }) => {
  await page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    const refuse = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return /webgl|webgpu/.test(kind) ? null : Reflect.apply(real, this, [kind, ...rest]);
    };
    HTMLCanvasElement.prototype.getContext = refuse as typeof real;
    Object.assign(globalThis, { OffscreenCanvas: undefined });
  });
  await takeReadyByFriday(page, './');
  await expect.poll(() => colours(page)).toBeGreaterThan(DRAWN);
  await expect(page.getByRole('alert')).toHaveCount(0);
  await proveTheMeter(page);
});

test('where nothing can be drawn one sentence says so, and the controls stand there in words', async ({
  page,
}, info) => {
  await page.addInitScript(() => {
    HTMLCanvasElement.prototype.getContext = () => null;
    Object.assign(globalThis, { OffscreenCanvas: undefined });
  });
  await takeReadyByFriday(page, './');
  await expect(page.getByRole('alert')).toContainText(
    'The bench cannot be drawn on this device. All of it can still be worked from the list of controls.',
  );
  await expect(bench(page).locator('canvas')).toHaveCount(0);
  await proveTheMeter(page);
  // The list can be seen, and pointed at: each control is a button with its name on it.
  await takeShot(page, info, 'in-words');
  await bench(page).locator('.mirror button').first().click({ trial: true });
  const red = bench(page).getByRole('button', { name: /^Red lead, on battery positive/ });
  const box = await red.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(24);
  expect(box?.width).toBeGreaterThan(120);
  await red.scrollIntoViewIfNeeded();
  expect(await red.evaluate((one) => getComputedStyle(one, '::after').content)).toContain('Red lead');
  await red.click();
  await bench(page)
    .getByRole('button', { name: /^Battery negative/ })
    .click();
  await expect(bench(page).getByRole('button', { name: /^Red lead, on battery negative/ })).toBeVisible();
});

test('a browser without sound, or with sound that is refused, is silent and complains of nothing', async ({
  page,
}) => {
  await page.addInitScript(() => {
    // The first half of this job knows no sound; after the reload it is there and is refused.
    if (sessionStorage.getItem('heard') === null) {
      Object.assign(globalThis, { AudioContext: undefined, webkitAudioContext: undefined, Audio: undefined });
      sessionStorage.setItem('heard', 'nothing');
      return;
    }
    class Refused {
      constructor() {
        throw new DOMException('no sound here', 'NotAllowedError');
      }
    }
    Object.assign(globalThis, { AudioContext: Refused, webkitAudioContext: Refused });
    HTMLMediaElement.prototype.play = () => Promise.reject(new DOMException('no', 'NotAllowedError'));
  });
  await takeReadyByFriday(page, './?render=canvas');
  await proveTheMeter(page);
  await page.reload();
  const hands = new MirrorHands(page, new Announcements(page));
  await expect(page.getByRole('tab', { name: 'Log', exact: true })).toBeVisible({ timeout: 30_000 });
  await hands.open('Log');
  await hands.choose('Key', 'On');
  await hands.log();
  await expect(log(page)).toContainText('key on');
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('a device that names no language has its charts all the same', async ({ page }) => {
  // As a bare Linux does: no tag that a number or a place could be written by.
  await page.addInitScript(() => {
    Object.defineProperty(Navigator.prototype, 'language', { get: () => 'C' });
    Object.defineProperty(Navigator.prototype, 'languages', { get: () => ['C'] });
  });
  await takeReadyByFriday(page, './?render=canvas');
  await expect(page.locator('.strip canvas')).toBeVisible({ timeout: 30_000 });
  await proveTheMeter(page);
  await expect(page.getByRole('alert')).toHaveCount(0);
});

bare('a job that does not come is told in one sentence, and comes with a reload', async ({ page }) => {
  const part = /\/assets\/ready-by-friday-[^/]*\.js$/;
  await page.route(part, (route) => route.abort());
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  const trouble = page.getByRole('alert');
  await expect(trouble).toContainText(
    'A part of the program could not be fetched. Nothing is lost: reload the page when the network is back.',
  );
  // Where the job would stand, the page says that it does not, and leads back; also when the sentence is put away.
  await trouble.getByRole('button', { name: 'Hide' }).click();
  await expect(page.getByRole('heading', { name: 'This page could not be opened.' })).toBeVisible();
  await page.getByRole('main').getByRole('button', { name: 'Back to the job board' }).click();
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await expect(trouble).toContainText('could not be fetched');
  await page.unroute(part);
  await trouble.getByRole('button', { name: 'Reload' }).click();
  await expect(page.getByRole('button', { name: 'Take the job' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('alert')).toHaveCount(0);
});

test('the part that weighs the evidence dies in mid-job: one sentence, and it weighs again from the record', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const all: Worker[] = [];
    Object.assign(window, { allWorkers: all });
    globalThis.Worker = class extends Worker {
      constructor(...from: ConstructorParameters<typeof Worker>) {
        super(...from);
        all.push(this);
      }
    };
  });
  await takeReadyByFriday(page, './?render=canvas');
  await proveTheMeter(page);
  await page.evaluate(() => {
    for (const worker of (window as unknown as { allWorkers: Worker[] }).allWorkers) {
      worker.terminate();
      worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory', cancelable: true }));
    }
  });
  const trouble = page.getByRole('alert');
  await expect(trouble).toContainText('Weighing the evidence broke off (out of memory).');
  await expect(trouble).toContainText('The bench goes on and nothing is lost.');
  await trouble.getByRole('button', { name: 'Try again' }).click();
  await expect(trouble).toHaveCount(0);
  const hands = new PointerHands(page);
  await hands.open('Coach');
  await hands.press('A question to think about');
  await expect(page.getByRole('tabpanel').getByRole('heading').first()).toHaveText('A question');
  await hands.open('Log');
  await expect(log(page)).toContainText(/12\.[4-8]\d V/);
  await hands.verdict('sense wire, cavity 3', 'open', [1]);
  await hands.close();
  await expect(page.getByRole('heading', { name: 'Debrief', exact: true })).toBeVisible({ timeout: 60_000 });
});

test('it dies without a word in mid-job and again at the closing: another takes its place each time it may, then one sentence', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const all: Worker[] = [];
    Object.assign(window, { allWorkers: all, diesAtDebrief: false });
    globalThis.Worker = class extends Worker {
      constructor(...from: ConstructorParameters<typeof Worker>) {
        super(...from);
        all.push(this);
      }
      override postMessage(...said: unknown[]): void {
        const kind = (said[0] as { readonly kind?: string }).kind;
        if (kind === 'debrief' && (window as unknown as { diesAtDebrief: boolean }).diesAtDebrief)
          this.terminate();
        Reflect.apply(super.postMessage, this, said);
      }
    };
  });
  await takeReadyByFriday(page, './?render=canvas');
  await proveTheMeter(page);
  await page.waitForTimeout(500);
  const workers = () =>
    page.evaluate(() => (window as unknown as { allWorkers: Worker[] }).allWorkers.length);
  const before = await workers();
  // As a system does that has no memory left: no event tells the page.
  await page.evaluate(() => {
    for (const worker of (window as unknown as { allWorkers: Worker[] }).allWorkers) worker.terminate();
  });
  await expect.poll(workers, 'another was started').toBe(before + 1);
  const hands = new PointerHands(page);
  await hands.open('Coach');
  await hands.press('A question to think about');
  await expect(page.getByRole('tabpanel').getByRole('heading').first()).toHaveText('A question');
  await expect(page.getByRole('alert')).toHaveCount(0);
  await page.evaluate(() => Object.assign(window, { diesAtDebrief: true }));
  await hands.open('Log');
  await hands.verdict('sense wire, cavity 3', 'open', [1]);
  await hands.close();
  await expect(page.getByRole('heading', { name: 'The debrief could not be worked out' })).toBeVisible();
  await expect(page.getByRole('alert')).toContainText(
    'Weighing the evidence broke off (it stopped without a word).',
  );
  await page.evaluate(() => Object.assign(window, { diesAtDebrief: false }));
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.getByRole('heading', { name: 'Debrief', exact: true })).toBeVisible({ timeout: 60_000 });
});

test('a browser that starts no worker: the bench goes on, and the closed job keeps its record', async ({
  page,
}) => {
  await page.addInitScript(() => {
    globalThis.Worker = class {
      constructor() {
        throw new DOMException('not here', 'SecurityError');
      }
    } as unknown as typeof Worker;
  });
  await takeReadyByFriday(page, './?render=canvas');
  const trouble = page.getByRole('alert');
  await expect(trouble).toContainText('did not start the part that weighs the evidence (not here)');
  await expect(trouble).toContainText('The bench goes on and nothing is lost.');
  await proveTheMeter(page);
  const hands = new PointerHands(page);
  await hands.verdict('sense wire, cavity 3', 'open', [1]);
  await hands.close();
  await expect(page.getByRole('heading', { name: 'The debrief could not be worked out' })).toBeVisible();
  const download = page.waitForEvent('download');
  await hands.press('Export the record');
  expect((await download).suggestedFilename()).toBe('known-good-ready-by-friday.json');
});
