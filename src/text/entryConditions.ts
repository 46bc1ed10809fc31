import type { UnitPort } from '../sim/devices/places.ts';
import type { Observation } from '../sim/world/Observation.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { gaugeInUse, isOfReader, readerSays } from './entryOfReader.ts';
import { gaugeByEye, needleAtRest, needleByEye, waterColumn } from './format.ts';
import { glowWords, ledWords, smokeWords, standsBetween } from './instrumentWords.ts';
import { meterStands } from './meterStands.ts';
import { say } from './translate.ts';

const SWING_WORTH_TELLING_KPA = 3.4;

/** Everything that has to stand beside a number for it to mean anything, each in a few words. */
export function conditions(entry: LogEntry, measuring: boolean): string[] {
  const { seen } = entry;
  const words: string[] = measuring ? meterWords(seen) : meterBeside(entry);
  if (seen.unit === 'known-good') words.push(say('log.onKnownGood'));
  words.push(say('log.key', { position: say(`key.${seen.key}`) }));
  if (!seen.plug.mated) words.push(say('log.parted'));
  if (!seen.fuse.fitted) words.push(say('log.fuseOut'));
  if (seen.supply.on) words.push(say('log.supplyOn'));
  if (seen.reader.command !== 'off') {
    words.push(say('log.command', { command: say(`solenoid.${seen.reader.command}`) }));
  }
  if (seen.wiggling !== null)
    words.push(say('log.wiggling', { place: say(`wigglePlaces.${seen.wiggling}`) }));
  words.push(
    ...readerWords(entry),
    ...vacuumWords(entry),
    ...toolWords(seen, measuring),
    ...jumperWords(seen),
  );
  const inCone = seen.sites['pump-hose-end'];
  if (inCone !== null) words.push(say('log.coneClosed', { fitting: say(`fittings.${inCone}`) }));
  for (const port of seen.surface.ports) words.push(...portWords(seen, port));
  return words;
}

/** The meter where the entry is first of another instrument: what it stands between. Its number stands beside. */
function meterBeside({ about, seen }: LogEntry): string[] {
  if (about !== 'reading' || seen.meter.function === 'off') return [];
  const between = meterStands(seen, false);
  return between === null ? [] : [say('log.meterBeside', { between }), ...meterWords(seen)];
}

function meterWords({ meter }: Observation): string[] {
  const words: string[] = [];
  if (meter.function !== 'volts-dc') words.push(say(`meterFunctions.${meter.function}`));
  if (meter.jack !== 'volts') words.push(say('log.jack', { jack: say(`meterJacks.${meter.jack}`) }));
  if (meter.heldRange !== null) words.push(say('log.range', { range: meter.ranges[meter.heldRange] ?? '' }));
  if (meter.hold) words.push(say('log.frozen'));
  if (meter.extremes === 'low' || meter.extremes === 'high')
    words.push(say('log.recorded', { which: say(`extremes.${meter.extremes}`) }));
  if (meter.relative) words.push(say('log.relative'));
  if (meter.batteryLow) words.push(say('log.batterySign'));
  return words;
}

/** What the controller made of its sense circuit, unless the entry says that first of all. */
function readerWords(entry: LogEntry): string[] {
  const said = isOfReader(entry) ? null : readerSays(entry.seen);
  return said === null ? [] : [say('log.readerBeside', { said })];
}

/** The needle, but for one at rest on a hose that lies on the mat: that says nothing of the truck. */
function vacuumWords({ seen, gaugeSwing }: LogEntry): string[] {
  const atRest = needleAtRest(seen.gauge.needleKPa);
  const swung = gaugeSwing.highKPa - gaugeSwing.lowKPa >= SWING_WORTH_TELLING_KPA;
  if (atRest && !swung && !gaugeInUse(seen)) return [];
  const still = atRest ? say('log.noVacuum') : gaugeByEye(seen.gauge.needleKPa);
  if (!swung) return [still];
  return [
    still,
    say('log.vacuumSwing', {
      low: needleByEye(Math.max(gaugeSwing.lowKPa, 0)),
      high: gaugeByEye(gaugeSwing.highKPa),
    }),
  ];
}

/** Manometer, lamp, LED tester and smoke, beside a meter that measures. */
function toolWords(seen: Observation, measuring: boolean): string[] {
  if (!measuring) return [];
  const words: string[] = [];
  if (Object.values(seen.sites).includes('manometer-hose'))
    words.push(
      seen.manometer.kPa === null
        ? say('log.noWater')
        : say('log.manometer', { reading: waterColumn(seen.manometer.kPa) }),
    );
  const lamp = standsBetween(seen, 'lamp-clip', 'lamp-tip', false);
  if (lamp !== null) words.push(`${say('log.lampOn', lamp)}, ${glowWords(seen.testLamp.glow)}`);
  const led = standsBetween(seen, 'led-clip', 'led-tip', false);
  if (led !== null) words.push(`${say('log.ledOn', led)}, ${ledWords(seen)}`);
  if (seen.smoke.gas !== 'off') words.push(smokeWords(seen));
  return words;
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
  if (fitting === 'cap-a' || fitting === 'cap-b' || fitting === 'cap-c')
    return [say('log.fitted', { site, clamp })];
  if (fitting === seen.surface.hoses[port] && seen.clamps[port] === 'hand-tight') return [];
  return [say('log.hoseOn', { fitting: say(`fittings.${fitting}`), site, clamp })];
}
