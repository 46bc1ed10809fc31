import type { UnitPort } from '../sim/devices/places.ts';
import type { MeterDisplay, Observation } from '../sim/world/Observation.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { describePoint } from './describePoint.ts';
import { capital, fixed, inHg, kPaToInHg } from './format.ts';
import { say } from './translate.ts';

/** A log entry in words: what was measured, under which conditions, the number, and what was heard. */
export interface EntryWords {
  readonly what: string;
  readonly conditions: string;
  readonly value: string;
  readonly heard: string | null;
}

/** Below this a needle is taken to rest on its zero pin (half a division of a 30 inHg gauge), kPa. */
const GAUGE_REST_KPA = 0.35;
const SWING_WORTH_TELLING_KPA = 3.4;
const PORTS: readonly UnitPort[] = ['canister-port', 'air-port', 'engine-port'];

export function describeEntry(entry: LogEntry, functionsKnown: boolean): EntryWords {
  const seen = entry.seen;
  const clicks = entry.heard.clicksOn + entry.heard.clicksOff;
  const heard = clicks > 0 ? say('log.clicks', { count: entry.heard.clicksOn || clicks }) : null;
  const probing = seen.leads['meter-red'] !== null && seen.leads['meter-black'] !== null;
  const measuring = probing && seen.meter.function !== 'off';
  const pumpSite = PORTS.find((port) => seen.sites[port] === 'pump-hose');
  let what: string;
  let value: string;
  if (measuring) {
    what = leadsWords(seen, functionsKnown);
    value = displayWords(seen.meter.display);
  } else if (heard !== null && pumpSite === undefined) {
    what = say('log.listen');
    value = heard;
  } else {
    what = pumpSite ? say('log.gaugeOn', { site: say(`sites.${pumpSite}`) }) : gaugeElsewhere(seen);
    value = inHg(seen.gauge.needleKPa);
  }
  return {
    what: capital(what),
    conditions: conditions(entry, measuring).join(' · '),
    value,
    heard: heard !== null && heard !== value ? heard : null,
  };
}

/** The digits as shown, with their unit; over range in words. */
export function displayWords(display: MeterDisplay): string {
  if (display.digits === '') return say('log.meterOff');
  if (display.digits.includes('OL')) return say('log.ol');
  return `${display.digits} ${display.unit}`.trim();
}

function gaugeElsewhere(seen: Observation): string {
  if (seen.sites['pump-hose-end'] !== null) return say('log.gaugeClosed');
  const site = Object.entries(seen.sites).find(([, fitting]) => fitting === 'pump-hose')?.[0];
  if (site !== undefined)
    return say('log.gaugeOn', { site: say(`sites.${site as keyof Observation['sites']}`) });
  return say('log.gaugeLoose');
}

function leadsWords(seen: Observation, functionsKnown: boolean): string {
  const red = seen.leads['meter-red'];
  const black = seen.leads['meter-black'];
  if (red === null || black === null) return say('log.gaugeLoose');
  return say('log.to', {
    red: describePoint(red, functionsKnown),
    black: describePoint(black, false),
  });
}

function conditions(entry: LogEntry, measuring: boolean): string[] {
  const seen = entry.seen;
  const words: string[] = [];
  if (measuring && seen.meter.function !== 'volts-dc')
    words.push(say(`meterFunctions.${seen.meter.function}`));
  words.push(say('log.key', { position: say(`key.${seen.key}`) }));
  if (!seen.plug.mated) words.push(say('log.parted'));
  if (seen.reader.command !== 'off') {
    words.push(say('log.command', { command: say(`solenoid.${seen.reader.command}`) }));
  }
  words.push(...vacuumWords(entry), ...jumperWords(seen));
  const inCone = seen.sites['pump-hose-end'];
  if (inCone !== null) words.push(say('log.coneClosed', { fitting: say(`fittings.${inCone}`) }));
  for (const port of PORTS) words.push(...portWords(seen, port));
  return words;
}

function vacuumWords({ seen, gaugeSwing }: LogEntry): string[] {
  const still = seen.gauge.needleKPa < GAUGE_REST_KPA ? say('log.noVacuum') : inHg(seen.gauge.needleKPa);
  if (gaugeSwing.highKPa - gaugeSwing.lowKPa < SWING_WORTH_TELLING_KPA) return [still];
  return [
    still,
    say('log.vacuumSwing', {
      low: fixed(kPaToInHg(Math.max(gaugeSwing.lowKPa, 0)), 1),
      high: fixed(kPaToInHg(gaugeSwing.highKPa), 1),
    }),
  ];
}

function jumperWords({ leads, jumper }: Observation): string[] {
  const words: string[] = [];
  const supply = leads['jumper-supply'];
  const far = leads['jumper-far'];
  if (jumper.switchedOn && supply && far) {
    words.push(say('log.jumperOn', { supply: say(`points.${supply}`), far: say(`points.${far}`) }));
  }
  const a = leads['plain-a'];
  const b = leads['plain-b'];
  if (a && b) words.push(say('log.plainOn', { a: say(`points.${a}`), b: say(`points.${b}`) }));
  return words;
}

/** Tells what is not as on the truck: caps, the pump, open ports. A hose in its own place is not news. */
function portWords(seen: Observation, port: UnitPort): string[] {
  const fitting = seen.sites[port];
  const site = say(`sites.${port}`);
  const clamp = say(`clamps.${seen.clamps[port]}`);
  if (fitting === null) return [say('log.siteOpen', { site })];
  if (fitting === 'cap-a' || fitting === 'cap-b') return [say('log.fitted', { site, clamp })];
  const own = {
    'canister-port': 'canister-hose',
    'air-port': 'air-hose',
    'engine-port': 'engine-hose',
  } as const;
  if (fitting === own[port] && seen.clamps[port] === 'hand-tight') return [];
  return [say('log.hoseOn', { fitting: say(`fittings.${fitting}`), site, clamp })];
}
