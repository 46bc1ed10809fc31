import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { Announcements } from './support/Announcements.ts';
import { grade } from './support/grade.ts';
import { place, site } from './support/Hands.ts';
import { MirrorHands } from './support/MirrorHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

/** What only the other rig has: none of it may be named at the bench of this one. */
const NOT_HERE = /canister|fuel tank|filler|purge|leak detection/i;
const AIR_HOSE_END = site('End of the air hose');

test('a whole job at the flap actuator: its own places and suspects, the fault found, the repair proven', async ({
  page,
}, info) => {
  test.setTimeout(420_000);
  const heard = new Announcements(page);
  await heard.listen();
  const hands = new MirrorHands(page, heard);
  await page.goto('./?render=canvas');
  await hands.press(/^Open the job *: Slow off the line/);
  await takeTheJob(page, hands);

  await expect(page.getByRole('button', { name: /^Engine vacuum hose, on engine vacuum port/ })).toHaveCount(
    1,
  );
  expect((await controlsOf(page)).filter((name) => NOT_HERE.test(name))).toEqual([]);
  for (const [tab, own] of [
    ['Suspects', 'The unit (flap actuator)'],
    ['Service data', 'diaphragm draws the lever'],
  ] as const) {
    await hands.open(tab);
    const column = page.getByRole('complementary');
    await expect(column).toContainText(own);
    await expect(column).not.toContainText(NOT_HERE);
  }

  let entries = 0;
  const log = async (): Promise<number> => {
    await hands.until('Log this reading', /^Logged as entry /);
    entries += 1;
    return entries;
  };
  const command = async (what: 'on' | 'off'): Promise<void> => {
    await page.getByRole('tab', { name: 'Command', exact: true }).press('Enter');
    await hands.choose('Command the solenoid', what);
  };
  const codes = async (button: string): Promise<string> => {
    await hands.open('Reader');
    await page.getByRole('tab', { name: 'Codes' }).first().press('Enter');
    return hands.until(button, /^Codes read/);
  };

  await hands.choose('Key', 'On');
  expect(await codes('Read codes')).toContain('P2004');
  entries += 1;
  await hands.choose('Key', 'Off');

  // Meter and pump, proven before they are believed.
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', place('Battery positive'));
  await hands.carry('Black lead', place('Battery negative'));
  expect((await hands.hearMeter()).value).toBeGreaterThan(12);
  await log();
  await hands.carry('Plug A', site('Cone of the pump hose'));
  for (let i = 0; i < 4; i++) await hands.stroke();
  for (let i = 0; i < 7; i++) await hands.press('Wait 10 s');
  await log();
  await letOff(hands);
  await hands.layDown('Plug A');

  // With the engine running it is commanded on, clicks, and the sense line does not fall.
  await hands.carry('Back-probe pins', { control: 'Cavity 3. Put a back-probe pin in', listed: 'Cavity 3' });
  await hands.carry('Red lead', { control: 'Cavity 3 wire side', listed: 'Cavity 3' });
  await hands.choose('Key', 'Running');
  await hands.open('Reader');
  const mark = await heard.mark();
  await command('on');
  await heard.next(mark, /Click/);
  expect((await hands.hearMeter()).value).toBeGreaterThan(8);
  const notClosed = await log();
  await command('off');
  await hands.choose('Key', 'Off');

  // Drawn by hand at the air port the same switch closes: can, lever and switch are good.
  await hands.layDown('Air hose');
  await hands.carry('Plug A', AIR_HOSE_END);
  await hands.carry('Pump hose', site('Air port'));
  await hands.press('Clamp at the air port, loose');
  await hands.choose('Key', 'On');
  for (let i = 0; i < 8; i++) await hands.stroke();
  expect((await hands.hearMeter()).value).toBeLessThan(1);
  const drawn = await log();
  await letOff(hands);
  expect((await hands.hearMeter()).value).toBeGreaterThan(8);
  const letGo = await log();
  await hands.choose('Key', 'Off');
  await hands.layDown('Pump hose');
  await hands.layDown('Plug A');
  await hands.carry('Air hose', site('Air port'));
  await hands.press('Clamp at the air port, loose');

  // What should draw it: the engine's vacuum, at the end of its hose, standing and flowing.
  await hands.layDown('Engine vacuum hose');
  await hands.carry('Pump hose', site('End of the engine vacuum hose'));
  await hands.choose('Key', 'Running');
  await hands.press('Wait 10 s');
  const standing = await log();
  await hands.press('Release lever, shut');
  await hands.press('Wait 10 s');
  const flowing = await log();
  await hands.press('Release lever, open');
  await hands.choose('Key', 'Off');
  await hands.layDown('Pump hose');
  await hands.carry('Engine vacuum hose', site('Engine vacuum port'));
  await hands.press('Clamp at the engine vacuum port, loose');

  await hands.press('Give a verdict');
  const dialog = page.getByRole('dialog', { name: 'Verdict' });
  await expect(dialog.getByRole('radio', { name: 'the unit (flap actuator)' })).toBeVisible();
  await expect(dialog).not.toContainText(NOT_HERE);
  await page.keyboard.press('Escape');
  await hands.verdict('engine vacuum hose', 'pinched', [notClosed, drawn, letGo, standing, flowing]);
  await hands.fit('engine vacuum hose');

  // The same reading with the new hose, three times, and the codes gone after a drive.
  await hands.carry('Engine vacuum hose', site('Engine vacuum port'));
  await hands.press('Clamp at the engine vacuum port, loose');
  await hands.choose('Key', 'Running');
  await hands.open('Reader');
  await command('on');
  expect((await hands.hearMeter()).value).toBeLessThan(1);
  await log();
  await command('off');
  expect((await hands.hearMeter()).value).toBeGreaterThan(8);
  await log();
  await hands.choose('Key', 'On');
  await page.getByRole('tab', { name: 'Codes' }).first().press('Enter');
  await hands.press('Clear codes');
  await hands.press('Clear them');
  await hands.choose('Key', 'Off');
  await hands.layDown('Red lead');
  await hands.layDown('Black lead');
  await hands.press('Back-probe pin in cavity 3');
  const readAgain = async (): Promise<string> => {
    await hands.choose('Key', 'On');
    const read = await codes('Read again');
    await hands.choose('Key', 'Off');
    return read;
  };
  expect(await hands.driveUntilNoCodes(readAgain)).toContain('no codes');
  await hands.close();

  const main = page.getByRole('main');
  await expect(page.getByRole('heading', { name: 'Debrief', exact: true })).toBeVisible({ timeout: 60_000 });
  await expect(main).toContainText('Your verdict was right.');
  await expect(main).not.toContainText(NOT_HERE);
  const download = page.waitForEvent('download');
  await hands.press('Export the record');
  const file = info.outputPath('record.json');
  await (await download).saveAs(file);
  const { claimedScore } = JSON.parse(readFileSync(file, 'utf8'));
  const graded = await grade(file);
  expect(graded.text).toContain(String(claimedScore));
  expect(graded.code).toBe(0);
  expect(claimedScore, graded.text).toBeGreaterThanOrEqual(70);
});

/** The name of every control, as a screen reader would read it. */
async function controlsOf(page: Page): Promise<readonly string[]> {
  return page
    .getByRole('button')
    .or(page.getByRole('radio'))
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-label') ?? one.textContent ?? ''));
}

/** Lets the vacuum off by the lever, and shuts it again. */
async function letOff(hands: MirrorHands): Promise<void> {
  await hands.press('Release lever, shut');
  await hands.press('Wait 10 s');
  await hands.press('Release lever, open');
}
