import type { Observation } from '../sim/world/Observation.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { displayWords } from './displayWords.ts';
import { besideReading } from './entryBeside.ts';
import { conditions } from './entryConditions.ts';
import { writtenByItself } from './entryOfItself.ts';
import { isOfReader, readerSays } from './entryOfReader.ts';
import { capital, gaugeByEye, needleAtRest, waterColumn } from './format.ts';
import { glowWords, ledWords, smokeWords, standsBetween } from './instrumentWords.ts';
import { isOfMeter, meterStands } from './meterStands.ts';
import { say } from './translate.ts';

/** A log entry in words: what was measured, under which conditions, the number, and what was heard. */
export interface EntryWords {
  readonly what: string;
  readonly conditions: string;
  readonly value: string;
  readonly heard: string | null;
}

interface Measured {
  readonly what: string;
  readonly value: string;
}

export function describeEntry(entry: LogEntry, functionsKnown: boolean): EntryWords {
  const { seen } = entry;
  const clicks = entry.heard.clicksOn + entry.heard.clicksOff;
  const heard = clicks > 0 && entry.about === 'reading' ? clicksWords(entry.heard) : null;
  const measuring = isOfMeter(entry);
  const stands = measuring ? meterStands(seen, functionsKnown) : null;
  const { what, value } =
    writtenByItself(entry) ??
    (stands !== null
      ? { what: stands, value: displayWords(seen.meter.display) }
      : isOfReader(entry)
        ? { what: say('log.ofReader'), value: readerSays(seen) ?? '' }
        : withoutMeter(seen, heard, functionsKnown));
  // What stands there as a number is no condition of it as well.
  const told = [value, ...besideReading(entry)];
  const around = conditions(entry, measuring).filter((words) => !told.includes(words));
  return {
    what: capital(what),
    conditions: around.join(' · '),
    value,
    heard: heard !== null && heard !== value ? heard : null,
  };
}

/** How often it clicked, and what fed the solenoid if that is known. */
function clicksWords({ clicksOn, clicksOff, by }: LogEntry['heard']): string {
  const heard = say('log.clicks', { count: clicksOn || clicksOff });
  return by === null ? heard : say('log.clicksBy', { heard, by: say(`log.clickSources.${by}`) });
}

/** What an entry is of when no lead of the meter measures: the finest instrument that is connected. */
function withoutMeter(seen: Observation, heard: string | null, functionsKnown: boolean): Measured {
  const { manometer, smoke } = seen;
  if (smoke.gas !== 'off') return { what: say('log.smokeTest'), value: smokeWords(seen) };
  const onManometer = siteOfFitting(seen, 'manometer-hose');
  if (onManometer !== null) {
    const value = manometer.kPa === null ? say('log.noWater') : waterColumn(manometer.kPa);
    return { what: say('log.manometerOn', { site: say(`sites.${onManometer}`) }), value };
  }
  const lamp = standsBetween(seen, 'lamp-clip', 'lamp-tip', functionsKnown);
  if (lamp !== null) return { what: say('log.lampOn', lamp), value: glowWords(seen.testLamp.glow) };
  const led = standsBetween(seen, 'led-clip', 'led-tip', functionsKnown);
  if (led !== null) return { what: say('log.ledOn', led), value: ledWords(seen) };
  const onGauge = siteOfFitting(seen, 'pump-hose');
  if (heard !== null && (onGauge === null || needleAtRest(seen.gauge.needleKPa)))
    return { what: say('log.listen'), value: heard };
  const what =
    onGauge !== null
      ? say('log.gaugeOn', { site: say(`sites.${onGauge}`) })
      : say(seen.sites['pump-hose-end'] === null ? 'log.gaugeLoose' : 'log.gaugeClosed');
  return { what, value: gaugeByEye(seen.gauge.needleKPa) };
}

function siteOfFitting(
  seen: Observation,
  fitting: 'manometer-hose' | 'pump-hose',
): keyof Observation['sites'] | null {
  const site = Object.entries(seen.sites).find(([, on]) => on === fitting)?.[0];
  return site === undefined ? null : (site as keyof Observation['sites']);
}
