import { expect, type Page } from '@playwright/test';
import { type Hands, place, site } from './Hands.ts';
import { takeTheJob } from './takeTheJob.ts';

/** What the newest entry of the log says. */
async function newestEntry(page: Page, hands: Hands): Promise<string> {
  await hands.log();
  await hands.open('Log');
  const rows = page.getByRole('table', { name: 'Log' }).getByRole('row');
  return `${await rows.nth(0).textContent()} ${await rows.nth(1).textContent()}`;
}

/**
 * Codes by the reader, then the vacuum switch's own trip point: jar on the canister port, hand pump and water column on
 * its tees, sense voltage on the meter, quarter strokes until it falls. Gives the column's reading, inH2O.
 */
export async function tripOnTheColumn(page: Page, hands: Hands): Promise<number> {
  await takeTheJob(page, hands);
  await hands.choose('Key', 'On');
  await hands.open('Reader');
  await hands.press('Read codes');
  await expect(page.getByRole('complementary')).toContainText('P0456');
  await hands.choose('Key', 'Off');

  await hands.carry('Back-probe pins', { control: 'Cavity 3. Put a back-probe pin in', listed: 'Cavity 3' });
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', place('Cavity 3 wire side'));
  await hands.carry('Black lead', place('Battery negative'));
  await hands.layDown('Canister hose');
  await hands.carry('Plug A', site('End of the canister hose'));
  await hands.layDown('Air hose');
  await hands.carry('Cap A', site('Air port'));
  await hands.press('Clamp at the air port, loose');
  await hands.choose('Tool shelf', 'Vacuum and water');
  await hands.carry('Jar hose', site('Canister port'));
  await hands.press('Clamp at the canister port, loose');
  await hands.carry('Manometer hose', site('Jar, tee A'));
  await hands.carry('Pump hose', site('Jar, tee B'));
  await hands.choose('Key', 'On');
  await hands.press('Until steady');
  expect(await newestEntry(page, hands)).toMatch(/[89]\.\d\d V/);

  for (let strokes = 0; strokes < 20; strokes++) {
    await hands.press('Quarter stroke');
    await hands.press('Until steady');
    const entry = await newestEntry(page, hands);
    const water = /(\d+\.\d) inH2O/.exec(entry)?.[1];
    if (/\b0\.0\d V|\d+\.\d mV/.test(entry) && water !== undefined) return Number(water);
  }
  throw new Error('the switch never made');
}
