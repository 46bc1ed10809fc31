import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { atOnce } from '../../src/base/steps.ts';
import { classKey } from '../../src/training/handout/classCode.ts';
import { sealedFileOf } from '../../src/training/handout/sealedFileOf.ts';
import { seatList } from '../../src/training/handout/seats.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { grade } from './support/grade.ts';
import { keptInBrowser } from './support/keptInBrowser.ts';
import { PointerHands } from './support/PointerHands.ts';
import { decideReadyByFriday, expectGoodDebrief } from './support/readyByFriday.ts';
import { expect, test } from './support/test.ts';

const CODE = 'Copper 17';
const SEATS = 12;

/** A shipped job with another id and title, and another truth beside its own. */
const CLASS_JOB = readFileSync(new URL('../../scenarios/ready-by-friday.yaml', import.meta.url), 'utf8')
  .replace('id: ready-by-friday', 'id: friday-in-class')
  .replace(/^title: .*$/m, 'title: Friday in class')
  .replace(/^remark:/m, 'variants:\n  - faults: [{ fault: feed-open }]\n\nremark:');

const loaded = loadScenario(CLASS_JOB, 'friday-in-class.yaml');
if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
const scenario = loaded.value;
const truths = seatList(scenario, atOnce(classKey('COPPER17', scenario.contentHash)), SEATS);
const seatOf = (fault: string): number => {
  const found = truths.find(({ truth }) => truth.faults.some((each) => each.fault === fault));
  if (found === undefined) throw new Error(`no seat has ${fault}`);
  return found.seat;
};

let folder = '';
const file = (name: string, text: string | Buffer): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'known-good-'));
});
test.afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

function sealed(classCode?: string): string {
  const made = sealedFileOf(CLASS_JOB, 'friday-in-class.yaml', {
    ...(classCode === undefined ? {} : { classCode }),
    seats: SEATS,
  });
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

const opened = (page: Page) => page.locator('dialog[open]');
const choose = (page: Page, ...paths: string[]) => page.setInputFiles('input[type=file]', paths);
const fromFiles = (page: Page) => page.getByRole('region', { name: 'From files' });

/** Drops a file on the page, as a hand does that drags it there. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  const transfer = await page.evaluateHandle(
    ([fileName, content]) => {
      const carried = new DataTransfer();
      carried.items.add(new File([content ?? ''], fileName ?? ''));
      return carried;
    },
    [name, text],
  );
  await page.dispatchEvent('main', 'dragover', { dataTransfer: transfer });
  await expect(page.getByText('Drop job files to open them')).toBeVisible();
  await page.dispatchEvent('main', 'drop', { dataTransfer: transfer });
}

test('a sealed file is dropped on the board, opened by code and seat, sat, exported and graded with its scenario', async ({
  page,
}) => {
  test.setTimeout(300_000);
  await page.goto('./?render=canvas');
  await drop(page, 'friday-in-class.job.json', sealed(CODE));
  const dialog = opened(page);
  await expect(dialog.getByLabel('Class code')).toBeFocused();
  // By keyboard alone, wrong at first.
  await page.keyboard.type('copper 18');
  await page.keyboard.press('Tab');
  await page.keyboard.type('99');
  await page.keyboard.press('Enter');
  await expect(dialog.getByRole('alert')).toContainText('Give a number from 1 to 12.');
  await expect(dialog.getByLabel('Seat (1 to 12)')).toBeFocused();
  const seat = seatOf('sense-open');
  await page.keyboard.press('Control+A');
  await page.keyboard.type(String(seat));
  await page.keyboard.press('Enter');
  await expect(dialog.getByRole('alert')).toContainText('This class code does not open this file.');
  await dialog.getByLabel('Class code').fill(CODE.toLowerCase());
  await page.keyboard.press('Enter');
  await expect(dialog).toContainText(`Friday in class · Seat ${seat}`);
  await expect(dialog.getByRole('button', { name: 'Open the job' })).toBeFocused();
  await page.keyboard.press('Enter');

  const hands = new PointerHands(page);
  await decideReadyByFriday(page, hands);
  await expectGoodDebrief(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export the record' }).first().click();
  const record = join(folder, 'record.json');
  await (await download).saveAs(record);
  const written = JSON.parse(readFileSync(record, 'utf8')) as {
    scenario: { contentHash: string };
    variant: { draw: string };
  };
  expect(written.scenario.contentHash).toBe(scenario.contentHash);
  expect(written.variant.draw).toMatch(new RegExp(`^class-[0-9a-f]{16}-seat-${seat}$`));

  const readable = file('friday-in-class.yaml', CLASS_JOB);
  const [held, bySealed, elsewhere] = await Promise.all([
    grade(record, '--scenario', readable, '--class-code', CODE),
    grade(record, '--scenario', file('x.job.json', sealed(CODE)), '--class-code', CODE),
    grade(record, '--scenario', readable, '--class-code', 'another class'),
  ]);
  expect(held.text).toMatch(new RegExp(`the claimed score of [\\d.]+ holds\\. Seat ${seat}\\.`));
  expect(held.code).toBe(0);
  expect(bySealed.code).toBe(0);
  expect(elsewhere.text).toContain('it was not sat under this class code');

  // On the board it is done, and its debrief is read again after it was removed with its record kept.
  await page.goto('./?render=canvas');
  await expect(fromFiles(page)).toContainText(
    `Seat ${seat} · Content hash ${scenario.contentHash.slice(0, 12)}`,
  );
  await fromFiles(page)
    .getByRole('button', { name: /^Remove/ })
    .click();
  await opened(page).getByRole('button', { name: 'Keep the records on this device' }).click();
  await expect(fromFiles(page)).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('region', { name: 'Finished jobs' })).toContainText('Friday in class');
  await page.getByRole('button', { name: 'Read the debrief' }).first().click();
  await expectGoodDebrief(page);
});

test('a file is named at once, however slowly its reader comes, and files dropped meanwhile wait with it', async ({
  page,
}) => {
  await page.goto('./?render=canvas');
  await expect(page.getByRole('heading', { level: 1, name: 'Job board' })).toBeVisible();
  let letGo = (): void => {};
  const held = new Promise<void>((resolve) => {
    letGo = resolve;
  });
  await page.route(/HandoutDialogs/, async (route) => {
    await held;
    await route.continue();
  });
  await choose(page, file('first.yaml', CLASS_JOB), file('second.yaml', 'nothing: here'));
  const coming = page.locator('.open-files-coming');
  await expect(coming).toHaveRole('status');
  await expect(coming).toContainText('Reading first.yaml …');
  await expect(coming).toContainText('Reading second.yaml …');
  await drop(page, 'third.job.json', sealed(CODE));
  await expect(coming.locator('p')).toHaveCount(3);
  await expect(opened(page)).toHaveCount(0);
  letGo();
  await expect(opened(page).locator('.job-file-name')).toHaveText([
    'first.yaml',
    'second.yaml',
    'third.job.json',
  ]);
  await expect(coming).toBeEmpty();
  await expect(opened(page)).not.toContainText('Reading this file');
  await expect(opened(page)).toContainText('The job is on the board');
  await expect(opened(page)).toContainText('This scenario file is not in order.');
  await expect(opened(page).getByLabel('Class code')).toBeVisible();
});

test('files that are no jobs are told why, the others come on the board and stay', async ({ page }) => {
  await page.goto('./?render=canvas');
  await choose(
    page,
    file('broken.yaml', CLASS_JOB.replace('level: 2', 'level: 9').replace('feed-open', 'feed-opne')),
    file('film.yaml', Buffer.alloc(100 * 1024 * 1024)),
    file('notes.yaml', Buffer.from([0xff, 0xfe, 0x41, 0x00])),
    file('cut.job.json', sealed().slice(0, 2000)),
    file('practice.yaml', CLASS_JOB),
    file('own.yaml', readFileSync(new URL('../../scenarios/ready-by-friday.yaml', import.meta.url))),
    file('namesake.yaml', CLASS_JOB.replace('Friday in class', 'Another Friday')),
  );
  const dialog = opened(page);
  const about = (name: string) => dialog.locator('li', { has: page.getByText(name, { exact: true }) });
  await expect(about('broken.yaml')).toContainText('2 things are to be mended');
  await expect(about('broken.yaml')).toContainText(/Line \d+, column \d+: level: "9" is none of the words/);
  await expect(about('broken.yaml')).toContainText(
    'variants[0].faults[0].fault: there is no fault "feed-opne"',
  );
  await expect(about('film.yaml')).toContainText('This file has 102400 KiB, and no job file has more than');
  await expect(about('notes.yaml')).toContainText('This is not a job file:');
  await expect(about('cut.job.json')).toContainText('changed or cut short');
  await expect(about('practice.yaml')).toContainText('The job is on the board');
  await expect(about('own.yaml')).toContainText('This is a job of the board itself.');
  await expect(about('namesake.yaml')).toContainText('another job of the same name with other content');
  await page.keyboard.press('Escape');
  await expect(fromFiles(page).getByRole('listitem')).toHaveCount(2);

  // Again, the same: it is there already. It outlives a reload, and what is kept of it tells nothing.
  await choose(page, file('again.yaml', CLASS_JOB));
  await expect(opened(page)).toContainText('This job is on the board already.');
  await page.keyboard.press('Escape');
  await page.reload();
  await expect(fromFiles(page)).toContainText('Friday in class');
  const kept = await keptInBrowser(page);
  expect(kept).toContain('friday-in-class--');
  for (const { fault } of scenario.variants?.flatMap(({ faults }) => faults) ?? [])
    expect(kept).not.toContain(fault);
  expect(kept).not.toContain(scenario.remark.slice(0, 40));

  // Its bench opens, and resumes after a reload.
  await fromFiles(page)
    .getByRole('button', { name: /^Open the job.*Friday in class$/ })
    .click();
  await expect(page.getByRole('heading', { level: 1, name: 'Friday in class' })).toBeVisible({
    timeout: 30_000,
  });
  expect(page.url()).toContain('friday-in-class--');
  expect(page.url()).not.toContain('open');
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'Friday in class' })).toBeVisible({
    timeout: 30_000,
  });

  // It goes as it came.
  await page.goto('./?render=canvas#/');
  await fromFiles(page)
    .getByRole('button', { name: /^Remove.*Another Friday$/ })
    .click();
  await opened(page).getByRole('button', { name: 'Remove', exact: true }).click();
  await expect(fromFiles(page).getByRole('listitem')).toHaveCount(1);

  // Of a job that was begun the record is taken away first.
  await fromFiles(page)
    .getByRole('button', { name: /^Remove.*Friday in class$/ })
    .click();
  await expect(opened(page)).toContainText('One sitting of this job is kept on this device.');
  const download = page.waitForEvent('download');
  await opened(page).getByRole('button', { name: 'Export the records, then delete them' }).click();
  expect((await download).suggestedFilename()).toMatch(/^known-good-friday-in-class--[0-9a-f]{12}\.json$/);
  await expect(fromFiles(page)).toHaveCount(0);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'Job board' })).toBeVisible();
  expect(await keptInBrowser(page)).not.toContain('friday-in-class');
});

test('where the browser keeps nothing the job is here for the visit, and it is said', async ({ page }) => {
  await page.addInitScript(() => Object.defineProperty(window, 'indexedDB', { value: undefined }));
  await page.goto('./?render=canvas');
  await choose(page, file('visit.yaml', CLASS_JOB));
  await expect(opened(page)).toContainText('the job is here for this visit only');
  await opened(page).getByRole('button', { name: 'Open the job' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Friday in class' })).toBeVisible({
    timeout: 30_000,
  });
  await page.getByRole('button', { name: 'Known Good' }).click();
  await expect(fromFiles(page)).toContainText('Friday in class');
});

test('in Spanish the class code is asked for in Spanish', async ({ browser, baseURL }) => {
  const context = await browser.newContext({
    locale: 'es-MX',
    baseURL: baseURL ?? '',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto('./?render=canvas');
  await choose(
    page,
    file('es.job.json', sealed(CODE)),
    file('roto.yaml', CLASS_JOB.replace('level: 2', 'level: 9')),
  );
  await expect(opened(page).getByLabel('Código de clase')).toBeFocused();
  await expect(opened(page)).toContainText('Hay una cosa que corregir');
  await expect(opened(page)).toContainText(/Línea \d+, columna \d+: level: /);
  await context.close();
});
