import { readFileSync } from 'node:fs';
import { test as bare, expect, type Page, type TestInfo } from '@playwright/test';
import { BUILT } from './support/builds.ts';
import { PlainServer } from './support/PlainServer.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { test, expect as watchedExpect } from './support/test.ts';

const BENCH = '/?render=canvas';
const KEEPS_NOTHING = /This browser keeps nothing/;
const DISK_FULL = /The disk is full/;

async function openReadyByFriday(page: Page): Promise<PointerHands> {
  const hands = new PointerHands(page);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await takeTheJob(page, hands);
  return hands;
}

/** Takes the record away by the button that the sentence offers. */
async function recordTakenAway(
  page: Page,
  info: TestInfo,
): Promise<{ actions: { action: { kind: string } }[] }> {
  const download = page.waitForEvent('download');
  await page.getByRole('alert').getByRole('button', { name: 'Export the record' }).click();
  const file = info.outputPath('record.json');
  await (await download).saveAs(file);
  return JSON.parse(readFileSync(file, 'utf8'));
}

for (const [name, takeAway] of [
  ['without IndexedDB', () => Object.defineProperty(window, 'indexedDB', { value: undefined })],
  [
    'where asking for IndexedDB is an error',
    () =>
      Object.defineProperty(window, 'indexedDB', {
        get() {
          throw new DOMException('denied', 'SecurityError');
        },
      }),
  ],
  [
    'where IndexedDB does not open',
    () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('no', 'InvalidStateError');
      };
    },
  ],
] as const) {
  test(`${name} a job runs in memory, one sentence says so, and its record can be taken away`, async ({
    page,
  }, info) => {
    await page.addInitScript(takeAway);
    await page.goto(BENCH);
    await watchedExpect(page.getByRole('alert')).toHaveText(KEEPS_NOTHING);
    // Hidden on the board, it comes again where there is something to lose.
    await page.getByRole('button', { name: 'Hide' }).click();
    const hands = await openReadyByFriday(page);
    await watchedExpect(page.getByRole('alert')).toHaveText(KEEPS_NOTHING);
    await hands.choose('Meter selector', 'DC volts');
    await page.waitForTimeout(500);
    const { actions } = await recordTakenAway(page, info);
    watchedExpect(actions.map(({ action }) => action.kind)).toContain('set-meter');
  });
}

test('a disk that is full in mid-job costs a sentence and no work, and the sentence goes when there is room again', async ({
  page,
}, info) => {
  await page.goto(BENCH);
  const hands = await openReadyByFriday(page);
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    Object.assign(window, { room: () => (IDBObjectStore.prototype.put = put) });
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
  });
  await hands.choose('Meter selector', 'DC volts');
  await watchedExpect(page.getByRole('alert')).toHaveText(DISK_FULL);
  await hands.choose('Key', 'On');
  await page.waitForTimeout(500);
  const { actions } = await recordTakenAway(page, info);
  watchedExpect(actions.map(({ action }) => action.kind)).toContain('set-key');
  // To the board and back: what the disk does not hold, the page does.
  await page.getByRole('button', { name: /Back to the job board/ }).click();
  await page.getByRole('button', { name: /Resume the job/ }).click();
  await watchedExpect(page.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked({
    timeout: 30_000,
  });
  await watchedExpect(page.getByRole('alert')).toHaveText(DISK_FULL);

  await page.evaluate(() => (window as unknown as { room: () => void }).room());
  await hands.press('Wait 10 s');
  await watchedExpect(page.getByText(DISK_FULL)).toHaveCount(0);
  await page.reload();
  await watchedExpect(page.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked({
    timeout: 30_000,
  });
});

test('what a user clears in mid-job is written again', async ({ page }) => {
  await page.goto(BENCH);
  const hands = await openReadyByFriday(page);
  await hands.choose('Meter selector', 'DC volts');
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Storage.clearDataForOrigin', {
    origin: new URL(page.url()).origin,
    storageTypes: 'indexeddb',
  });
  await hands.choose('Key', 'On');
  await page.waitForTimeout(1000);
  await watchedExpect(page.getByRole('alert')).toHaveCount(0);
  await page.reload();
  await watchedExpect(page.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked({
    timeout: 30_000,
  });
});

test('every write says at once that it is all, so that a page that is left then holds up no other', async ({
  page,
}) => {
  // Some browsers put a page to sleep that is left, before it could hear that its write is done: the store stayed shut for the next.
  await page.goto(BENCH);
  const hands = await openReadyByFriday(page);
  await page.evaluate(() => {
    const begun = { all: 0, leftOpen: 0 };
    Object.assign(window, { begun });
    const begin = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (...asked: Parameters<typeof begin>) {
      const transaction = Reflect.apply(begin, this, asked);
      begun.all += 1;
      begun.leftOpen += 1;
      transaction.commit = () => {
        begun.leftOpen -= 1;
        IDBTransaction.prototype.commit.call(transaction);
      };
      return transaction;
    };
  });
  await hands.choose('Meter selector', 'DC volts');
  const begun = () => page.evaluate(() => (window as unknown as { begun: { all: number } }).begun);
  await watchedExpect.poll(async () => (await begun()).all).toBeGreaterThan(0);
  watchedExpect(await begun()).toMatchObject({ leftOpen: 0 });
});

test('settings hold for the page where nothing keeps them, and one sentence says so', async ({ page }) => {
  await page.addInitScript(() => {
    for (const name of ['localStorage', 'sessionStorage']) {
      Object.defineProperty(window, name, {
        get() {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    }
  });
  await page.goto(BENCH);
  await watchedExpect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  await watchedExpect(page.getByRole('alert')).toHaveCount(0);
  await page.getByRole('button', { name: 'Settings' }).click();
  await page.getByRole('radio', { name: 'dark', exact: true }).check();
  await watchedExpect(page.locator('html')).toHaveAttribute('data-theme', 'shop-floor');
  await watchedExpect(page.getByText(/does not keep settings/)).toBeVisible();
  await page.keyboard.press('Escape');
  const hands = await openReadyByFriday(page);
  await hands.open('Service data');
});

test('the same job in a second page is refused there, begun anew it is too, and the first goes on unharmed', async ({
  context,
  page,
}) => {
  await page.goto(BENCH);
  const hands = await openReadyByFriday(page);
  await hands.choose('Meter selector', 'DC volts');
  await page.waitForTimeout(500);

  const second = await context.newPage();
  await second.goto(BENCH);
  second.on('dialog', (dialog) => void dialog.accept());
  await second.getByRole('button', { name: 'Start anew' }).click();
  await watchedExpect(second.getByRole('alert')).toHaveText(/open in another page/, { timeout: 15_000 });
  await second.getByRole('button', { name: 'Hide' }).click();
  await second.getByRole('button', { name: /Resume the job/ }).click();
  await watchedExpect(second.getByRole('alert')).toHaveText(/open in another page/, { timeout: 15_000 });
  await watchedExpect(second.getByRole('button', { name: 'Take the job' })).toHaveCount(0);

  await hands.choose('Key', 'On');
  await page.waitForTimeout(500);
  // Closed in mid-job, as a tab is: the second page may go on where the first stopped.
  await page.close();
  await second.reload();
  await watchedExpect(second.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked({
    timeout: 30_000,
  });
  await watchedExpect(second.getByRole('radio', { name: 'On', exact: true }).first()).toBeChecked();
  await second.close();
});

bare.describe('an address that is not secure', () => {
  bare.use({ serviceWorkers: 'allow' });

  bare(
    'works with the network, says nothing of the rest, and keeps two pages apart',
    async ({ context, page }) => {
      // Not one of the names a browser trusts on the machine itself (W3C, Secure Contexts).
      const server = await PlainServer.serve(BUILT, '0.0.0.0');
      try {
        await page.goto(`${server.address}?render=canvas`);
        expect(await page.evaluate(() => window.isSecureContext)).toBe(false);
        await openReadyByFriday(page);
        await expect(page.getByRole('alert')).toHaveCount(0);
        const second = await context.newPage();
        await second.goto(`${server.address}?render=canvas`);
        await second.waitForTimeout(3000);
        await expect(second.getByText(/network/)).toHaveCount(0);
        await second.getByRole('button', { name: /Resume the job/ }).click();
        await expect(second.getByRole('alert')).toHaveText(/open in another page/, { timeout: 15_000 });
        await page.close();
        await second.reload();
        await expect(second.getByRole('region', { name: 'Bench' })).toBeVisible({ timeout: 30_000 });
      } finally {
        await server.stop();
      }
    },
  );
});

bare.describe('a browser that keeps no program', () => {
  bare.use({ serviceWorkers: 'allow' });

  for (const [name, refuse] of [
    [
      'refuses the worker',
      () => {
        ServiceWorkerContainer.prototype.register = () =>
          Promise.reject(new DOMException('denied', 'SecurityError'));
      },
    ],
    ['has no worker at all', () => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker')],
  ] as const) {
    bare(
      `${name}: one sentence says what is lost, and everything works with the network`,
      async ({ page, baseURL }) => {
        await page.addInitScript(refuse);
        await page.goto(`${baseURL}${BENCH.slice(1)}`);
        await expect(page.getByText(/keeps no copy of the program/)).toBeVisible();
        await openReadyByFriday(page);
        await expect(page.getByRole('alert')).toHaveCount(0);
      },
    );
  }

  bare('has no room for it: the same', async ({ page }) => {
    const server = await PlainServer.serve(BUILT);
    try {
      const devtools = await page.context().newCDPSession(page);
      const { origin } = new URL(server.address);
      await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 300_000 });
      await page.goto(`${server.address}?render=canvas`);
      await expect(page.getByText(/keeps no copy of the program/)).toBeVisible({ timeout: 30_000 });
      expect(await page.evaluate(() => caches.keys())).toEqual([]);
    } finally {
      await server.stop();
    }
  });
});
