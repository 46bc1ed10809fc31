import { readFileSync } from 'node:fs';
import { test as bare, expect, type Page } from '@playwright/test';
import { grade } from './support/grade.ts';
import { LongTasks } from './support/LongTasks.ts';
import { logBattery } from './support/logBattery.ts';
import { PointerHands } from './support/PointerHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { test } from './support/test.ts';

const TABLES = '**/assets/shop*.json';
const DEBRIEF_MS = 60_000;

async function openReadyByFriday(page: Page): Promise<PointerHands> {
  const hands = new PointerHands(page);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await takeTheJob(page, hands);
  return hands;
}

/** The meter on the battery, logged: entry 1. */
async function proveTheMeter(page: Page, hands: PointerHands): Promise<void> {
  await logBattery(hands);
  await page.getByRole('tab', { name: 'Log', exact: true }).click();
  await expect(page.getByRole('complementary')).toContainText(/12\.[4-8]\d V/);
}

async function decideAndClose(hands: PointerHands): Promise<void> {
  await hands.verdict('sense wire, cavity 3', 'open', [1]);
  await hands.close();
}

const debrief = (page: Page) => page.getByRole('heading', { name: 'Debrief', exact: true });

async function scoreShown(page: Page): Promise<number> {
  const shown = await page
    .getByText(/\b\d+ of 100\b/)
    .first()
    .textContent();
  return Number(/(\d+) of 100/.exec(shown ?? '')?.[1]);
}

test('the coach answers beside the bench, and the debrief scores as the command line does', async ({
  page,
}, info) => {
  test.setTimeout(240_000);
  const tasks = new LongTasks(page);
  const told: string[] = [];
  await tasks.watch();
  await page.goto('./?render=canvas');
  const hands = await openReadyByFriday(page);
  await page.waitForTimeout(1000);
  told.push(await tasks.tell('opening the job'));
  expect(page.workers().length).toBe(1);
  await proveTheMeter(page, hands);
  told.push(await tasks.tell('first reading'));

  await page.getByRole('tab', { name: 'Coach', exact: true }).click();
  const answer = page.getByRole('tabpanel');
  for (const [ask, title] of [
    ['A question to think about', 'A question'],
    ['How to do it', 'Read codes and freeze data'],
  ] as const) {
    const since = Date.now();
    await hands.press(ask);
    await expect(answer.getByRole('heading').first()).toHaveText(title, { timeout: 30_000 });
    told.push(`"${ask}" answered in ${Date.now() - since} ms`, await tasks.tell('the coach'));
  }

  await hands.press('Wait 10 s');
  await hands.log();
  await expect(page.getByRole('tabpanel')).toContainText('Given before entry 2.');
  await hands.choose('Key', 'On');
  await page.waitForTimeout(3000);
  await hands.choose('Key', 'Off');
  told.push(await tasks.tell('bench in use'));

  const since = Date.now();
  await decideAndClose(hands);
  await expect(debrief(page)).toBeVisible({ timeout: DEBRIEF_MS });
  told.push(`verdict, close and debrief in ${Date.now() - since} ms`, await tasks.tell('debrief'));
  // The worker is let go with its last answer, and whoever replays the sitting is not this one.
  const score = await scoreShown(page);
  const download = page.waitForEvent('download');
  await hands.press('Export the record');
  const file = info.outputPath('record.json');
  await (await download).saveAs(file);
  const record = JSON.parse(readFileSync(file, 'utf8'));
  expect(record.claimedScore).toBe(score);
  const graded = await grade(file);
  expect(graded.text).toContain(String(score));
  expect(graded.code).toBe(0);
  for (const line of told) {
    info.annotations.push({ type: 'record', description: line });
    console.log(line);
  }
});

test('no worker is left behind by a job that is left', async ({ page }) => {
  await page.goto('./?render=canvas');
  await openReadyByFriday(page);
  expect(page.workers().length).toBe(1);
  await page.getByRole('button', { name: 'Back to the job board' }).first().click();
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  await expect.poll(() => page.workers().length).toBe(0);
  await page.getByRole('button', { name: /Resume the job/ }).click();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  expect(page.workers().length).toBe(1);
});

test('a job closed and left before its score is known is worked out when its debrief is read', async ({
  page,
}) => {
  test.setTimeout(240_000);
  let held = true;
  await page.route(TABLES, async (route) => {
    // The tables do not come while the job is sat.
    while (held) await new Promise((later) => setTimeout(later, 50));
    await route.continue().catch(() => {});
  });
  await page.goto('./?render=canvas');
  const hands = await openReadyByFriday(page);
  await proveTheMeter(page, hands);
  await decideAndClose(hands);
  await expect(page.getByRole('main')).toContainText('Working out what your evidence was worth');
  await expect(page.getByRole('progressbar')).toBeVisible();
  await page.goto('./?render=canvas#/');
  await page.reload();
  held = false;
  await expect(page.getByRole('main')).toContainText('Ready by Friday · – of 100');
  await hands.press('Read the debrief');
  await expect(debrief(page)).toBeVisible({ timeout: DEBRIEF_MS });
  const score = await scoreShown(page);
  await page.goto('./?render=canvas#/');
  await page.reload();
  await expect(page.getByRole('main')).toContainText(`Ready by Friday · ${score} of 100`);
});

bare('without its tables the bench goes on, and the debrief can be tried again', async ({ page }) => {
  bare.setTimeout(240_000);
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.route(TABLES, (route) => route.abort());
  await page.goto('./?render=canvas');
  const hands = await openReadyByFriday(page);
  const trouble = page.getByRole('alert');
  await expect(trouble).toContainText('could not be fetched');
  await expect(trouble).toContainText('The bench goes on and nothing is lost.');
  await trouble.getByRole('button', { name: 'Hide' }).click();
  await proveTheMeter(page, hands);
  await decideAndClose(hands);
  await expect(page.getByRole('heading', { name: 'The debrief could not be worked out' })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Export the record' })).toBeVisible();
  await page.unroute(TABLES);
  await hands.press('Try again');
  await expect(debrief(page)).toBeVisible({ timeout: DEBRIEF_MS });
  expect(errors).toEqual([]);
});
