import type { Observation } from '../sim/world/Observation.ts';
import { displayWords } from './displayWords.ts';
import { gaugeByEye, waterColumn } from './format.ts';
import { meterStands } from './meterStands.ts';
import { say } from './translate.ts';

/** One instrument or control with what it says, in words. */
export interface InstrumentLine {
  readonly name: string;
  readonly says: string;
}

/** What the learner's own instruments and controls said at a moment. */
export function describeInstruments(seen: Observation): readonly InstrumentLine[] {
  const { meter, reader } = seen;
  const stands = meter.function === 'off' ? null : meterStands(seen, true);
  const reading = displayWords(meter.display);
  const onManometer = Object.values(seen.sites).includes('manometer-hose');
  const lines: InstrumentLine[] = [
    {
      name: say('replay.meter'),
      says: stands === null ? reading : say('replay.meterBetween', { reading, stands }),
    },
    { name: say('replay.gauge'), says: gaugeByEye(seen.gauge.needleKPa) },
  ];
  if (onManometer) {
    const { kPa } = seen.manometer;
    lines.push({ name: say('replay.manometer'), says: kPa === null ? say('log.noWater') : waterColumn(kPa) });
  }
  lines.push(
    { name: say('replay.key'), says: say(`key.${seen.key}`) },
    { name: say('replay.plug'), says: say(seen.plug.mated ? 'replay.plugMated' : 'replay.plugParted') },
    { name: say('replay.command'), says: say(`solenoid.${reader.command}`) },
  );
  if (reader.senseState !== null)
    lines.push({ name: say('replay.reader'), says: say(`reader.states.${reader.senseState}`) });
  return lines;
}
