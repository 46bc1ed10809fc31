import { type Hands, place } from './Hands.ts';

/** The first entry of most jobs: the meter on the battery, a known source. */
export async function logBattery(hands: Hands): Promise<void> {
  await hands.choose('Meter selector', 'DC volts');
  await hands.carry('Red lead', place('Battery positive'));
  await hands.carry('Black lead', place('Battery negative'));
  await hands.press('Wait 10 s');
  await hands.log();
}
