import { Announcements } from './support/Announcements.ts';
import { place, site } from './support/Hands.ts';
import { MirrorHands } from './support/MirrorHands.ts';
import { takeTheJob } from './support/takeTheJob.ts';
import { expect, test } from './support/test.ts';

const VOLTS = '\\d+\\.\\d\\d volts';

test('live regions are told exactly what the bench has to say, and nothing while nothing happens', async ({
  page,
}) => {
  const heard = new Announcements(page);
  await heard.listen();
  const hands = new MirrorHands(page, heard);
  await page.goto('./?render=canvas');
  await hands.press(/Ready by Friday/);
  await takeTheJob(page, hands);

  // What is done is told at once, the reading when it has settled.
  let mark = await heard.mark();
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', place('Battery positive'));
  await hands.carry('Black lead', place('Battery negative'));
  await heard.next(mark, /^Meter shows 12\.\d\d volts$/);
  const told = await heard.since(mark);
  expect(told).toContain('Red lead placed on battery positive.');
  expect(told).toContain('Black lead placed on battery negative.');
  // What is in hand is told while its place is chosen.
  expect(told).toContain(
    'Red lead in hand. Choose its place, or the bare mat to lay it down; Esc puts it back.',
  );

  // Five seconds of a bench at rest: the last digit hunts, and nobody is told.
  mark = await heard.mark();
  await page.waitForTimeout(5000);
  expect(await heard.since(mark)).toEqual([]);

  // The key R, with the focus anywhere on the bench, reads everything now.
  mark = await heard.mark();
  await page.getByRole('button', { name: /^Meter shows/ }).focus();
  await page.keyboard.press('r');
  expect(await heard.next(mark, /^Meter \d/)).toMatch(
    new RegExp(`^Meter ${VOLTS}\\. Gauge about 0 inHg\\.$`),
  );

  // Over range in words, continuity once as it comes and once as it goes.
  await hands.layDown('Red lead');
  mark = await heard.mark();
  await hands.choose('Meter selector', 'Continuity');
  await heard.next(mark, /^Meter shows over range$/);
  await hands.layDown('Black lead');
  mark = await heard.mark();
  await hands.carry('Red lead', place('Tip of the black lead'));
  await heard.next(mark, /^continuity, 0\.\d+ ohms$/);
  await page.waitForTimeout(2500);
  await hands.layDown('Red lead');
  await heard.next(mark, /^no continuity, over range$/);
  const tone = (await heard.since(mark)).filter((text) => /continuity,/.test(text));
  expect(tone).toHaveLength(2);

  // Eight strokes on a closed hose: the needle climbs, and nothing is told but what was done before.
  await hands.carry('Plug A', site('Cone of the pump hose'));
  await page.waitForTimeout(2500);
  mark = await heard.mark();
  for (let i = 0; i < 8; i++) await hands.stroke();
  expect(await heard.since(mark)).toEqual([]);

  // Readings of all this time, two seconds apart at least.
  const readings = (await heard.all()).filter(({ text }) => /^Meter shows/.test(text));
  for (let i = 1; i < readings.length; i++) {
    expect((readings[i]?.atMs ?? 0) - (readings[i - 1]?.atMs ?? 0)).toBeGreaterThan(1900);
  }
});
