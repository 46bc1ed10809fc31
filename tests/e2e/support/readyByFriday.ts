import { expect, type Page } from '@playwright/test';
import { type Hands, place, site } from './Hands.ts';
import { logBattery } from './logBattery.ts';
import { takeTheJob } from './takeTheJob.ts';

const BATTERY_POSITIVE = place('Battery positive');
const BATTERY_NEGATIVE = place('Battery negative');
const CAVITY_3 = place('Cavity 3 wire side');
const CONTROLLER_SENSE = place('Controller end of the sense wire');

/** Lets the sitting's own time pass, by the bench's wait button. */
async function wait(page: Page, hands: Hands, tens: number): Promise<void> {
  for (let i = 0; i < tens; i++) {
    await hands.press('Wait 10 s');
    await page.waitForTimeout(350);
  }
}

/** From the work order to the debrief: the unit is good and the sense wire is open. */
export async function workReadyByFriday(page: Page, hands: Hands): Promise<void> {
  await takeTheJob(page, hands);

  // Prove the meter on the battery.
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', BATTERY_POSITIVE);
  await hands.carry('Black lead', BATTERY_NEGATIVE);
  await wait(page, hands, 1);
  await hands.log();
  await hands.open('Log');
  await expect(page.getByRole('complementary')).toContainText(/12\.[4-8]\d V/);

  // Prove the hand pump on its own closed hose for a minute.
  await hands.carry('Plug A', site('Cone of the pump hose'));
  for (let i = 0; i < 4; i++) await hands.stroke();
  await wait(page, hands, 7);
  await hands.log();
  await hands.press('Release lever, shut');
  await wait(page, hands, 1);
  await hands.press('Release lever, open');
  await hands.layDown('Plug A');

  // Open the hoses and plug them.
  await hands.layDown('Canister hose');
  await hands.carry('Plug A', site('End of the canister hose'));
  await hands.layDown('Air hose');
  await hands.carry('Plug B', site('End of the air hose'));

  // Sense with the key on: at the plug, then at the controller.
  await hands.carry('Back-probe pins', { control: 'Cavity 3. Put a back-probe pin in', listed: 'Cavity 3' });
  await hands.carry('Red lead', CAVITY_3);
  await hands.choose('Key', 'On');
  await wait(page, hands, 1);
  await hands.log();
  await hands.carry('Red lead', CONTROLLER_SENSE);
  await wait(page, hands, 1);
  await hands.log();
  await expect(page.getByRole('complementary')).toContainText(/[89]\.\d\d V/);

  // The verdict cites both ends of the wire.
  await hands.verdict('sense wire, cavity 3', 'open', [3, 4]);
  await expect(page.getByRole('main')).toContainText(/Verdict locked/);

  // Key off, new wire, and the same test on it, under vacuum.
  await hands.choose('Key', 'Off');
  await hands.fit('sense wire, cavity 3');
  await hands.carry('Red lead', CAVITY_3);
  await hands.carry('Cap A', site('Air port'));
  await hands.press('Clamp at the air port, loose');
  await hands.carry('Pump hose', site('Canister port'));
  await hands.press('Clamp at the canister port, loose');
  await hands.choose('Key', 'On');
  await wait(page, hands, 1);
  await hands.log();
  await hands.stroke();
  await hands.stroke();
  await wait(page, hands, 1);
  await hands.log();
  await hands.press('Release lever, shut');
  await wait(page, hands, 1);
  await hands.log();

  // Put everything back.
  await hands.choose('Key', 'Off');
  await hands.press('Release lever, open');
  await hands.layDown('Red lead');
  await hands.layDown('Black lead');
  await hands.press('Back-probe pin in cavity 3');
  await hands.layDown('Pump hose');
  await hands.layDown('Cap A');
  await hands.layDown('Plug A');
  await hands.layDown('Plug B');
  await hands.carry('Canister hose', site('Canister port'));
  await hands.press('Clamp at the canister port, loose');
  await hands.carry('Air hose', site('Air port'));
  await hands.press('Clamp at the air port, loose');
  await hands.close();
}

/** The same job decided after one reading: for tests of what comes before and after a sitting. The verdict is right all the same. */
export async function decideReadyByFriday(page: Page, hands: Hands): Promise<void> {
  await takeTheJob(page, hands);
  await logBattery(hands);
  await hands.verdict('sense wire, cavity 3', 'open', [1]);
  await expect(page.getByRole('main')).toContainText(/Verdict locked/);
  await hands.fit('sense wire, cavity 3');
  await hands.close();
}

/** What the debrief must say of that job. */
export async function expectGoodDebrief(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { name: 'Debrief' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('main')).toContainText('Your verdict was right.');
  await expect(page.getByRole('main')).toContainText('sense wire');
}
