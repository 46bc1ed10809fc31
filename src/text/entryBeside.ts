import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { inH2O, inHg } from './format.ts';

/** Below this a needle rests on its pin and a column on its zero, kPa. */
const AT_REST_KPA = 0.35;
const COLUMN_AT_REST_KPA = 0.02;

/**
 * What the vacuum instruments in use showed beside a meter that measured: in a vacuum test the one number says nothing
 * without the other. Empty when the entry is no reading of the meter, or nothing is drawn.
 */
export function besideReading({ about, seen }: LogEntry): readonly string[] {
  const { leads, meter, sites, gauge, manometer } = seen;
  const measuring =
    about === 'reading' &&
    leads['meter-red'] !== null &&
    leads['meter-black'] !== null &&
    meter.function !== 'off';
  if (!measuring) return [];
  const fitted = Object.values(sites);
  const onGauge = fitted.includes('pump-hose') || sites['pump-hose-end'] !== null;
  return [
    ...(onGauge && gauge.needleKPa >= AT_REST_KPA ? [inHg(gauge.needleKPa)] : []),
    ...(fitted.includes('manometer-hose') && (manometer.kPa ?? 0) >= COLUMN_AT_REST_KPA
      ? [inH2O(manometer.kPa ?? 0)]
      : []),
  ];
}
