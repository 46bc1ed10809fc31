import type { MeterDisplay } from '../sim/world/Observation.ts';
import { say } from './translate.ts';

/** The digits as shown, with their unit; over range in words, and said where they still moved. */
export function displayWords(display: MeterDisplay): string {
  if (display.digits === '') return say('log.meterOff');
  if (display.digits.includes('-') && display.value === null) return say('log.notSettled');
  const reading = display.digits.includes('OL') ? say('log.ol') : `${display.digits} ${display.unit}`.trim();
  return display.settled ? reading : say('log.moving', { reading });
}
