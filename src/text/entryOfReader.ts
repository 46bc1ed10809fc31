import type { Observation } from '../sim/world/Observation.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { needleAtRest, volts } from './format.ts';
import { standsBetween } from './instrumentWords.ts';
import { isOfMeter } from './meterStands.ts';
import { say } from './translate.ts';

/** Whether the pump hose, and with it the gauge, is on anything. */
export function gaugeInUse({ sites }: Observation): boolean {
  return Object.values(sites).includes('pump-hose') || sites['pump-hose-end'] !== null;
}

/** `8.98 V, open`: sense as the controller sees it, by the reader; null while the controller sleeps. */
export function readerSays({ reader }: Observation): string | null {
  if (reader.senseVolts === null || reader.senseState === null) return null;
  return `${volts(reader.senseVolts)}, ${say(`reader.states.${reader.senseState}`)}`;
}

/** A reading of the learner's own that no other instrument was at: the reader is what it was made for. */
export function isOfReader(entry: LogEntry): boolean {
  const { about, seen, heard } = entry;
  return (
    about === 'reading' &&
    heard.clicksOn + heard.clicksOff === 0 &&
    readerSays(seen) !== null &&
    !isOfMeter(entry) &&
    seen.smoke.gas === 'off' &&
    !Object.values(seen.sites).includes('manometer-hose') &&
    standsBetween(seen, 'lamp-clip', 'lamp-tip', false) === null &&
    standsBetween(seen, 'led-clip', 'led-tip', false) === null &&
    !gaugeInUse(seen) &&
    needleAtRest(seen.gauge.needleKPa)
  );
}
