import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, type Page, type TestInfo, test } from '@playwright/test';
import { parse } from 'yaml';
import { filesOfBuild } from '../../src/platform/node/offline/filesOfBuild.ts';
import { OFFLINE_WORKER } from '../../src/platform/node/offline/writeOfflineWorker.ts';
import { jobSentences } from '../../src/text/es/jobs.ts';
import { axeFindings, DRESSES, LIGHT } from './support/axe.ts';
import { anotherVersion, BUILT } from './support/builds.ts';
import { handedOut } from './support/handedOut.ts';
import { layoutFaults } from './support/layoutFaults.ts';
import { logBattery } from './support/logBattery.ts';
import { PlainServer } from './support/PlainServer.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeShot } from './support/shot.ts';
import { takeTheJob } from './support/takeTheJob.ts';

test.use({ serviceWorkers: 'allow' });

const KEPT = 'Kept on this device: works without the network.';
const READY = /A new version of Known Good is ready/;

/** What an author says at the end, in English whose Spanish stands apart, or in both. */
interface Remarked {
  readonly remark?: string | Readonly<Record<string, string>>;
  readonly variants?: readonly Remarked[];
}

let server: PlainServer;
test.beforeEach(async () => {
  server = await PlainServer.serve(BUILT);
});
test.afterEach(async () => {
  await server.stop();
});

async function firstVisit(page: Page): Promise<void> {
  await page.goto(`${server.address}?render=canvas`);
  await expect(page.getByText(KEPT)).toBeVisible({ timeout: 30_000 });
}

/** Which version the page on the screen came from; none while it is being loaded. */
function versionOf(page: Page): Promise<string | undefined> {
  return page.evaluate(() => document.documentElement.dataset['version'] ?? 'first').catch(() => undefined);
}

/** A mark that is gone when the page is loaded again. */
async function mark(page: Page): Promise<void> {
  await page.evaluate(() => Object.assign(window, { marked: true }));
}

function marked(page: Page): Promise<boolean> {
  return page.evaluate(() => 'marked' in window);
}

/** Looks at a page with a notice on it, in every dress, wide and narrow. Of a narrow bench only at the notice: its places have a test of their own. */
async function lookAt(page: Page, info: TestInfo, name: string, screen: 'board' | 'bench'): Promise<void> {
  for (const width of [1280, 360]) {
    await page.setViewportSize({ width, height: 800 });
    for (const { name: dress, media } of [{ name: 'light', media: LIGHT }, ...DRESSES]) {
      // Without motion colours stand at once.
      await page.emulateMedia({ ...media, reducedMotion: 'reduce' });
      await page.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
      );
      const what = `${name}, ${width}, ${dress}`;
      const within = screen === 'bench' && width < 1280 ? '.newer-version' : null;
      expect.soft(await axeFindings(page, null, within), what).toEqual([]);
      expect.soft(await layoutFaults(page), what).toEqual([]);
      await page.locator('.newer-version, .kept-line').first().scrollIntoViewIfNeeded();
      await takeShot(page, info, what.replace(/[ ,]+/g, '-'));
    }
  }
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.emulateMedia(LIGHT);
}

test('the list in the worker is the build, file by file, and nothing else', () => {
  const worker = readFileSync(join(BUILT, OFFLINE_WORKER), 'utf8');
  const [, list] = /files:(\[\[.*?\]\])/.exec(worker) ?? [];
  const files: unknown = JSON.parse((list ?? '').replaceAll('`', '"'));
  expect(files).toEqual(filesOfBuild(BUILT, [OFFLINE_WORKER]));
  const names = readdirSync(BUILT, { recursive: true, encoding: 'utf8' }).map((name) =>
    name.replaceAll('\\', '/'),
  );
  for (const needed of ['index.html', 'manifest.webmanifest', 'icons/icon.svg'])
    expect(names).toContain(needed);
  // What is fetched once and kept under its name for ever has its hash in its name.
  const unhashed = names.filter((name) => /^assets\/.+/.test(name) && !/-[\w-]{8}\.\w+$/.test(name));
  expect(unhashed).toEqual([]);
});

test('the browser would install it', async ({ page }) => {
  await firstVisit(page);
  const devtools = await page.context().newCDPSession(page);
  const { errors, data, url } = await devtools.send('Page.getAppManifest');
  expect(url).toBe(`${server.address}manifest.webmanifest`);
  expect(errors).toEqual([]);
  expect(JSON.parse(data ?? '{}')).toMatchObject({ short_name: 'Known Good', display: 'standalone' });
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  // A test's window leaves no traces, which is the one thing that a browser may hold against it.
  expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
    [],
  );
});

test('after one visit everything is there without the network: jobs, bench, coach, sounds, Spanish', async ({
  page,
  context,
}) => {
  await firstVisit(page);
  await server.stop();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();

  const hands = new PointerHands(page);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await takeTheJob(page, hands);
  await hands.open('Log');
  await logBattery(hands);
  await expect(page.getByRole('tabpanel')).toContainText(/12\.[4-8]\d V/);

  // The suspects are weighed by a worker with tables of its own.
  await page.getByRole('tab', { name: 'Coach', exact: true }).click();
  await hands.press('A question to think about');
  await expect(page.getByRole('tabpanel').getByRole('heading').first()).toHaveText('A question', {
    timeout: 60_000,
  });

  await hands.press('Settings');
  await page.getByRole('radio', { name: 'Español' }).check();
  await expect(page.getByRole('dialog', { name: 'Ajustes' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('heading', { name: 'Listo para el viernes' })).toBeVisible();

  const sounds = readdirSync(join(BUILT, 'assets')).filter((name) => name.endsWith('.wav'));
  expect(sounds.length).toBeGreaterThan(8);
  const seconds = await page.evaluate(async (names) => {
    const player = new OfflineAudioContext(1, 1, 44_100);
    const lengths: number[] = [];
    for (const name of names) {
      const response = await fetch(`assets/${name}`);
      lengths.push((await player.decodeAudioData(await response.arrayBuffer())).duration);
    }
    return lengths;
  }, sounds);
  for (const length of seconds) expect(length).toBeGreaterThan(0);

  // What came is what the build made: every file of it answers.
  const gone = await page.evaluate(
    async (paths) => {
      const answers = await Promise.all(
        paths.map((path) =>
          fetch(path).then(
            ({ ok }) => ok,
            () => false,
          ),
        ),
      );
      return paths.filter((_, i) => !answers[i]);
    },
    filesOfBuild(BUILT, [OFFLINE_WORKER]).map(([path]) => path),
  );
  expect(gone).toEqual([]);
});

test('a job file is opened and its job sat without the network', async ({ page, context }) => {
  await firstVisit(page);
  const board = `${server.address}?render=canvas#/`;
  await server.stop();
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'Job board' })).toBeVisible();
  await page.setInputFiles('input[type=file]', handedOut().slice(1, 2));
  const dialog = page.locator('dialog[open]');
  await dialog.getByLabel('Class code').fill('copper17');
  await dialog.getByLabel('Seat (1 to 24)').fill('5');
  await dialog.getByRole('button', { name: 'Open', exact: true }).click();
  await dialog.getByRole('button', { name: 'Open the job' }).click();
  await takeTheJob(page, new PointerHands(page));
  await page.goto(board);
  await page.reload();
  await expect(page.getByRole('region', { name: 'From files' })).toContainText('Seat 5');
});

test('what is kept tells a learner no more than the build does', async ({ page }) => {
  await firstVisit(page);
  const kept = await page.evaluate(async () => {
    const texts: string[] = [];
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        const response = await cache.match(request, { ignoreVary: true });
        if (response !== undefined && /\.(js|json|html)$/.test(request.url))
          texts.push(await response.text());
      }
    }
    return texts.join('\n');
  });
  expect(kept).toContain('capsule-torn');
  expect(kept).not.toMatch(/severity["']?:\s*0\.\d+["',}\s]*[^\n]{0,80}capsule-torn/);
  expect(kept).not.toContain('It is the hold that');
  // What an author says at the end of a job stands nowhere, neither as it is written nor in Spanish.
  const folder = join(BUILT, '..', 'scenarios');
  const remarks = readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => parse(readFileSync(join(folder, name), 'utf8')) as Remarked)
    .flatMap((job) =>
      [job, ...(job.variants ?? [])].flatMap(({ remark }) => (remark === undefined ? [] : [remark])),
    );
  expect(remarks.length).toBeGreaterThan(10);
  for (const remark of remarks) {
    const said = typeof remark === 'string' ? [remark, jobSentences[remark]] : Object.values(remark);
    expect(said.length).toBe(2);
    for (const words of said) expect(kept).not.toContain((words ?? '').trim().slice(-60));
  }
});

test.describe('a new version', () => {
  let another: string;
  test.beforeAll(async () => {
    another = await anotherVersion();
  });
  test.afterAll(() => rmSync(another, { recursive: true, force: true }));

  test('is offered on the job board, waits in mid-job, and comes in when it is asked for', async ({
    page,
  }) => {
    await firstVisit(page);
    const hands = new PointerHands(page);
    await page.getByRole('button', { name: /Ready by Friday/ }).click();
    await takeTheJob(page, hands);
    await hands.choose('Meter selector', 'DC volts');
    server.folder = another;
    await page.reload();
    await expect(page.getByText(/It will be offered on the job board/)).toBeVisible({ timeout: 30_000 });
    await mark(page);
    expect(await versionOf(page)).toBe('first');
    await expect(page.getByRole('button', { name: 'Use the new version' })).toHaveCount(0);
    await hands.press('Wait 10 s');
    await expect(page.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked();

    await page.getByRole('button', { name: /Back to the job board/ }).click();
    await expect(page.getByText(READY)).toBeVisible();
    expect(await marked(page)).toBe(true);
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect.poll(() => versionOf(page), { timeout: 20_000 }).toBe('another');
    await expect(page.getByText(KEPT)).toBeVisible();
    await expect(page.getByText(READY)).toHaveCount(0);
    await expect.poll(() => page.evaluate(() => caches.keys())).toHaveLength(1);

    await page.getByRole('button', { name: /Resume the job.*Ready by Friday/ }).click();
    await expect(page.getByRole('radio', { name: 'DC volts', exact: true })).toBeChecked({ timeout: 30_000 });
  });

  test('does not come in while another page has a job open, and leaves that page what it needs', async ({
    page,
    context,
  }) => {
    await firstVisit(page);
    const other = await context.newPage();
    await other.goto(`${server.address}?render=canvas`);
    await other.getByRole('button', { name: /Ready by Friday/ }).click();
    await takeTheJob(other, new PointerHands(other));
    await mark(other);

    server.folder = another;
    await page.reload();
    await expect(page.getByText(READY)).toBeVisible({ timeout: 30_000 });
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect(page.getByText(/A job is open in another page/)).toBeVisible({ timeout: 20_000 });
    expect(await versionOf(page)).toBe('first');

    await other.getByRole('button', { name: /Back to the job board/ }).click();
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect.poll(() => versionOf(page), { timeout: 20_000 }).toBe('another');
    await expect(page.getByText(KEPT)).toBeVisible();

    // The other page is still the older one and was not loaded again; its Spanish is of its own version, though no server has it now.
    await expect(other.getByText(/put in from another page/)).toBeVisible();
    expect(await marked(other)).toBe(true);
    await other.getByRole('button', { name: 'Settings' }).click();
    await other.getByRole('radio', { name: 'Español' }).check();
    await expect(other.getByRole('dialog', { name: 'Ajustes' })).toBeVisible();
    await other.keyboard.press('Escape');
    expect(await other.evaluate(() => caches.keys())).toHaveLength(2);

    await other.getByRole('button', { name: 'Recargar' }).click();
    await expect.poll(() => versionOf(other), { timeout: 20_000 }).toBe('another');
    await expect.poll(() => other.evaluate(() => caches.keys()), { timeout: 20_000 }).toHaveLength(1);
  });

  test('is told so that everybody can read it, and so is that the program is kept', async ({
    page,
    context,
  }, info) => {
    test.setTimeout(240_000);
    await firstVisit(page);
    const kept = page.locator('.kept-line');
    await kept.scrollIntoViewIfNeeded();
    await lookAt(page, info, 'kept', 'board');
    const other = await context.newPage();
    await other.goto(`${server.address}?render=canvas`);
    await other.getByRole('button', { name: /Ready by Friday/ }).click();
    await takeTheJob(other, new PointerHands(other));

    server.folder = another;
    await page.reload();
    await expect(page.getByText(READY)).toBeVisible({ timeout: 30_000 });
    await lookAt(page, info, 'offered', 'board');
    await expect(other.getByText(/It will be offered on the job board/)).toBeVisible();
    await lookAt(other, info, 'later', 'bench');
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect(page.getByText(/A job is open in another page/)).toBeVisible({ timeout: 20_000 });
    await lookAt(page, info, 'job-elsewhere', 'board');
    await other.getByRole('button', { name: /Back to the job board/ }).click();
    await page.getByRole('button', { name: 'Use the new version' }).click();
    await expect(other.getByText(/put in from another page/)).toBeVisible({ timeout: 20_000 });
    await lookAt(other, info, 'taken-elsewhere', 'board');
  });

  test('that is only half in place is not taken', async ({ page }) => {
    // The worker of one build beside the page of another.
    const half = await anotherVersion();
    try {
      rmSync(join(half, 'index.html'));
      const whole = server.folder;
      await firstVisit(page);
      server.folder = half;
      await page.evaluate(async () => {
        const registration = await navigator.serviceWorker.getRegistration();
        await registration?.update();
      });
      await expect
        .poll(() =>
          page.evaluate(async () => {
            const registration = await navigator.serviceWorker.getRegistration();
            return registration?.installing === null && registration.waiting === null;
          }),
        )
        .toBe(true);
      expect(await page.evaluate(() => caches.keys())).toHaveLength(1);
      await expect(page.getByText(READY)).toHaveCount(0);
      server.folder = whole;
      await page.reload();
      await expect(page.getByText(KEPT)).toBeVisible();
    } finally {
      rmSync(half, { recursive: true, force: true });
    }
  });
});
