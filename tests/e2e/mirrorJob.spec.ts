import { readFileSync } from 'node:fs';
import { Announcements } from './support/Announcements.ts';
import { grade } from './support/grade.ts';
import { place } from './support/Hands.ts';
import { MirrorHands } from './support/MirrorHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

/** The way of the feed from the battery to the plug, and what is bad when a point is the first without voltage. */
const WAY = [
  { point: 'Fuse, battery side', bad: { item: 'battery', mode: 'weak' } },
  { point: 'Fuse, load side', bad: { item: 'fuse', mode: 'melted' } },
  {
    point: 'Controller end of the feed wire',
    bad: { item: 'controller', mode: 'feed driver: dead, or stuck on' },
  },
  { point: 'Cavity 1 wire side', bad: { item: 'feed wire, cavity 1', mode: 'open' } },
] as const;
/** Less than this is no feed. */
const FEED_VOLTS = 8;
const NOTHING_LOST = {
  item: 'the unit (leak detection pump)',
  mode: 'solenoid winding: open, or turns shorted',
};

test('a whole job by roles, names and what is said: the fault is found by the readings, the repair proven', async ({
  page,
}, info) => {
  test.setTimeout(180_000);
  const heard = new Announcements(page);
  await heard.listen();
  const hands = new MirrorHands(page, heard);
  await page.goto('./?render=canvas');
  await hands.press(/^Open the job *: Silent on command/);
  await takeTheJob(page, hands);

  const readCodes = async (button: string): Promise<string> => {
    await hands.choose('Key', 'On');
    await hands.open('Reader');
    await page.getByRole('tab', { name: 'Codes' }).first().press('Enter');
    const codes = await hands.until(button, /^Codes read/);
    await hands.choose('Key', 'Off');
    return codes;
  };
  const command = async (what: 'on' | 'off'): Promise<void> => {
    await page.getByRole('tab', { name: 'Command', exact: true }).press('Enter');
    await hands.choose('Command the solenoid', what);
  };
  let entries = 0;
  const log = async (): Promise<number> => {
    await hands.until('Log this reading', /^Logged as entry /);
    entries += 1;
    return entries;
  };

  expect(await readCodes('Read codes')).toContain('P2401');
  entries += 1;

  // The meter, proven on the battery.
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', place('Battery positive'));
  await hands.carry('Black lead', place('Battery negative'));
  const battery = await hands.hearMeter();
  expect(battery.unit).toBe('volts');
  expect(battery.value).toBeGreaterThan(12);
  await log();

  // Three clicks asked for, and none heard: a click is said in words.
  await hands.carry('Back-probe pins', place('Cavity 1'));
  await hands.choose('Key', 'On');
  await hands.open('Reader');
  const before = await heard.mark();
  for (let i = 0; i < 3; i++) {
    await command('on');
    await hands.until('Until steady', /^(Steady|Still)/);
    await command('off');
  }
  expect((await heard.since(before)).filter((said) => /Click/.test(said))).toEqual([]);
  await log();

  // Point by point along the feed, with the solenoid commanded on.
  await command('on');
  const readings: { readonly point: string; readonly volts: number; readonly entry: number }[] = [];
  for (const { point } of WAY) {
    await hands.carry('Red lead', { control: point, listed: point.replace(' wire side', '') });
    const { value } = await hands.hearMeter();
    readings.push({ point, volts: value, entry: await log() });
  }
  await command('off');
  await hands.carry('Red lead', place('Battery positive'));
  expect((await hands.hearMeter()).value, 'the leads are still whole').toBeGreaterThan(12);
  const again = await log();

  // What was heard decides, and nothing else.
  const lost = readings.findIndex(({ volts }) => volts < FEED_VOLTS);
  const { item, mode } = WAY[lost]?.bad ?? NOTHING_LOST;
  const cites = [readings[lost - 1]?.entry, readings[lost]?.entry, again].filter((id) => id !== undefined);
  info.annotations.push({ type: 'record', description: JSON.stringify({ item, mode, readings }) });

  // What could have melted a fuse: the coil, and the feed wire to ground, through the parted plug.
  await hands.choose('Key', 'Off');
  await hands.layDown('Red lead');
  await hands.layDown('Black lead');
  await hands.press('Back-probe pin in cavity 1');
  await hands.press('Plug, mated. Part it');
  await hands.choose('Meter selector', 'Ohms');
  await hands.carry('Red lead', place('Unit half, terminal 1'));
  await hands.carry('Black lead', place('Unit half, terminal 2'));
  const coil = await hands.hearMeter();
  expect(coil.unit).toBe('ohms');
  await log();
  await hands.carry('Red lead', place('Harness half, terminal 1'));
  await hands.carry('Black lead', place('Battery negative'));
  const toGround = await hands.hearMeter();
  expect(toGround.value).toBeGreaterThan(1000);
  await log();
  await hands.layDown('Red lead');
  await hands.press('Plug, parted. Mate it');

  await hands.verdict(item, mode, cites);
  await expect(page.getByRole('main')).toBeVisible();
  await hands.fit(item);

  // The same reading on the new part, and the click, heard.
  await hands.carry('Back-probe pins', place('Cavity 1'));
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', { control: 'Cavity 1 wire side', listed: 'Cavity 1' });
  await hands.choose('Key', 'On');
  await hands.open('Reader');
  const mended = await heard.mark();
  await command('on');
  await heard.next(mended, /Click from the unit: the plunger drew in\./);
  expect((await hands.hearMeter()).value).toBeGreaterThan(FEED_VOLTS);
  await log();
  await command('off');
  await page.getByRole('tab', { name: 'Codes' }).first().press('Enter');
  await hands.press('Clear codes');
  await hands.press('Clear them');
  await hands.choose('Key', 'Off');

  // Everything back, a drive, and the codes once more.
  await hands.layDown('Red lead');
  await hands.layDown('Black lead');
  await hands.press('Back-probe pin in cavity 1');
  expect(await hands.driveUntilNoCodes(() => readCodes('Read again'))).toContain('no codes');
  await hands.close();

  const main = page.getByRole('main');
  await expect(page.getByRole('heading', { name: 'Debrief', exact: true })).toBeVisible({ timeout: 60_000 });
  await expect(main).toContainText('Your verdict was right.');
  const shown = await main
    .getByText(/\b\d+ of 100\b/)
    .first()
    .textContent();
  const score = Number(/(\d+) of 100/.exec(shown ?? '')?.[1]);
  const download = page.waitForEvent('download');
  await hands.press('Export the record');
  const file = info.outputPath('record.json');
  await (await download).saveAs(file);
  expect(JSON.parse(readFileSync(file, 'utf8')).claimedScore).toBe(score);
  const graded = await grade(file);
  expect(graded.text).toContain(String(score));
  expect(graded.code).toBe(0);
  expect(score, graded.text).toBeGreaterThanOrEqual(80);
});
