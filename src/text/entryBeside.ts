import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { displayWords } from './displayWords.ts';
import { gaugeByEye, needleAtRest, waterColumn } from './format.ts';
import { isOfMeter, meterMeasures } from './meterStands.ts';

/** Below this a column rests on its zero, kPa. */
const COLUMN_AT_REST_KPA = 0.02;

/**
 * The other number of an entry. Beside a meter that measured: what the vacuum instruments in use showed, for in a vacuum
 * test the one number says nothing without the other. Beside another instrument: what the meter showed, where it measured.
 */
export function besideReading(entry: LogEntry): readonly string[] {
  const { about, seen } = entry;
  if (about !== 'reading' || !meterMeasures(seen)) return [];
  if (!isOfMeter(entry)) return [displayWords(seen.meter.display)];
  const { sites, gauge, manometer } = seen;
  const fitted = Object.values(sites);
  const onGauge = fitted.includes('pump-hose') || sites['pump-hose-end'] !== null;
  return [
    ...(onGauge && !needleAtRest(gauge.needleKPa) ? [gaugeByEye(gauge.needleKPa)] : []),
    ...(fitted.includes('manometer-hose') && (manometer.kPa ?? 0) >= COLUMN_AT_REST_KPA
      ? [waterColumn(manometer.kPa ?? 0)]
      : []),
  ];
}
