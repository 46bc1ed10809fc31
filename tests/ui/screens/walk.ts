import type { Page } from '@playwright/test';
import { type Hands, place, site } from '../../e2e/support/Hands.ts';
import { takeTheJob } from '../../e2e/support/takeTheJob.ts';
import type { Camera } from './Camera.ts';
import {
  asItStands,
  closeDialog,
  JOB_FILES,
  markDialog,
  ON_EVERY_BENCH,
  tab,
  verdictDialog,
} from './stops.ts';

/** A walkthrough as it opens: the steps, the work order as a page, and nothing logged yet. */
export async function walkFirstDay(page: Page, hands: Hands, camera: Camera): Promise<void> {
  await camera.take([asItStands('board', true), JOB_FILES, asItStands('board-files')]);
  await openJob(page, 'First day on the bench');
  await page.getByRole('button', { name: 'Take the job' }).first().waitFor({ timeout: 60_000 });
  await camera.take([asItStands('order-page', true)]);
  await takeTheJob(page, hands);
  await page.waitForTimeout(800);
  await camera.take([tab('steps'), tab('log', 'log-empty'), tab('suspects', 'suspects-empty'), tab('coach')]);
  await hands.open('Coach');
  await page.locator('.coach-depth').nth(2).click();
  await page.locator('.coach-answer h3').waitFor({ timeout: 120_000 });
  await camera.take([tab('coach', 'coach-answer')]);
}

/** A practice job from its first reading to its debrief, with a look at every screen on the way. */
export async function walkReadyByFriday(page: Page, hands: Hands, camera: Camera): Promise<void> {
  await openJob(page, 'Ready by Friday');
  await takeTheJob(page, hands);
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', place('Battery positive'));
  await hands.carry('Black lead', place('Battery negative'));
  await measure(hands);
  await hands.carry('Plug A', site('Cone of the pump hose'));
  for (let i = 0; i < 3; i++) await hands.stroke();
  await hands.log();
  await hands.press('Wait 10 s');
  await measure(hands);
  await hands.carry('Back-probe pins', { control: 'Cavity 3. Put a back-probe pin in', listed: 'Cavity 3' });
  await hands.carry('Red lead', place('Cavity 3 wire side'));
  await measure(hands);
  await hands.choose('Key', 'On');
  await measure(hands);
  await hands.carry('Red lead', place('Controller end of the sense wire'));
  await measure(hands);
  await measure(hands);
  await mark(page, 'Fuse', 'Cleared', [1, 4]);
  await mark(page, 'Sense wire', 'Convicted', [5, 6]);
  await camera.take([...ON_EVERY_BENCH, verdictDialog, markDialog]);
  await hands.verdict('sense wire, cavity 3', 'open', []);
  await camera.take([tab('log', 'repair-log'), tab('suspects', 'repair-suspects'), ...repairDialogs()]);
  await hands.choose('Key', 'Off');
  await hands.fit('sense wire, cavity 3');
  await hands.choose('Key', 'On');
  await hands.carry('Red lead', place('Cavity 3 wire side'));
  await measure(hands);
  await hands.choose('Key', 'Off');
  await hands.layDown('Plug A');
  await hands.close();
  await page.getByRole('heading', { name: 'Debrief' }).waitFor({ timeout: 180_000 });
  await page.waitForTimeout(3000);
  await camera.take([asItStands('debrief', true), asItStands('debrief-top')]);
  await hands.press('Known Good');
  await camera.take([asItStands('board-done', true)]);
}

function repairDialogs() {
  const cupboard = ON_EVERY_BENCH.filter(({ name }) => name === 'cupboard' || name === 'road');
  return [...cupboard.map((stop) => ({ ...stop, name: `repair-${stop.name}` })), closeDialog];
}

async function openJob(page: Page, title: string): Promise<void> {
  await page
    .getByRole('button', { name: new RegExp(title) })
    .first()
    .click();
}

async function measure(hands: Hands): Promise<void> {
  await hands.press('Wait 10 s');
  await hands.log();
}

async function mark(page: Page, item: string, as: string, entries: readonly number[]): Promise<void> {
  await page.getByRole('tab', { name: 'Suspects' }).click();
  await page.locator('.suspect-head').filter({ hasText: item }).first().click();
  await page.getByRole('radio', { name: new RegExp(`^${as}`) }).check();
  for (const id of entries) await page.getByRole('checkbox', { name: new RegExp(`^${id} `) }).check();
  await page.getByRole('button', { name: 'Set this mark' }).click();
}
