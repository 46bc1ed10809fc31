import { readFileSync, writeFileSync } from 'node:fs';
import type { Page, TestInfo } from '@playwright/test';
import { grade } from './support/grade.ts';
import { KeyHands } from './support/KeyHands.ts';
import { PointerHands } from './support/PointerHands.ts';
import { expectGoodDebrief, workReadyByFriday } from './support/readyByFriday.ts';
import { takeShot } from './support/shot.ts';
import { expect, test } from './support/test.ts';

/** Exports the record from the debrief and has the command line replay it. */
async function gradeExport(page: Page, info: TestInfo): Promise<void> {
  const shown = await page
    .getByText(/\b\d+ of 100\b/)
    .first()
    .textContent();
  const score = Number(/(\d+) of 100/.exec(shown ?? '')?.[1]);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Export the record' }).click();
  const file = info.outputPath('record.json');
  await (await download).saveAs(file);
  const record = JSON.parse(readFileSync(file, 'utf8'));
  expect(JSON.stringify(record)).not.toMatch(/sense-open|fault/);
  const forged = info.outputPath('forged.json');
  writeFileSync(forged, JSON.stringify({ ...record, claimedScore: score + 1 }));
  const [honest, more] = await Promise.all([grade(file), grade(forged)]);
  expect(honest.text).toContain(String(score));
  expect(honest.code).toBe(0);
  // The check can fail: a record that claims one point more does not hold.
  expect(more.code).toBe(1);
}

test('a whole job by pointer, and the exported record graded by the command line', async ({ page }, info) => {
  test.setTimeout(180_000);
  // The drawing library's other way of drawing is proven where it is taken away in mid-job.
  await page.goto('./?render=canvas');
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await workReadyByFriday(page, new PointerHands(page));
  await expectGoodDebrief(page);
  await takeShot(page, info, 'debrief');
  await gradeExport(page, info);
});

test('the same whole job by keys alone', async ({ page }) => {
  test.setTimeout(180_000);
  await page.goto('./?render=canvas');
  const hands = new KeyHands(page);
  await hands.press('Open the job: Ready by Friday');
  await workReadyByFriday(page, hands);
  await expectGoodDebrief(page);
});
