import type { LeadEnd, LeadPoint } from '../sim/devices/places.ts';
import type { Observation } from '../sim/world/Observation.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { describePoint } from './describePoint.ts';
import { say } from './translate.ts';

type MeterEnd = 'meter-red' | 'meter-black';

/** Things with two ends that may lengthen a lead of the meter, or lie between its tips. */
const BETWEEN: readonly {
  readonly name: 'ground' | 'jumper' | 'lamp' | 'led';
  readonly ends: readonly [LeadEnd, LeadEnd];
}[] = [
  { name: 'ground', ends: ['plain-a', 'plain-b'] },
  { name: 'jumper', ends: ['jumper-supply', 'jumper-far'] },
  { name: 'lamp', ends: ['lamp-clip', 'lamp-tip'] },
  { name: 'led', ends: ['led-clip', 'led-tip'] },
];

const TIP: Readonly<Record<MeterEnd, LeadPoint>> = {
  'meter-red': 'meter-red-tip',
  'meter-black': 'meter-black-tip',
};

/** What the meter stands between, in words, or null while a lead of it touches nothing. */
export function meterStands(seen: Observation, functionsKnown: boolean): string | null {
  const { leads } = seen;
  if (leads['meter-red'] === TIP['meter-black'] || leads['meter-black'] === TIP['meter-red'])
    return say('log.tipToTip');
  const between = BETWEEN.find(({ ends: [one, other] }) => {
    const points = [leads[one], leads[other]];
    return points.includes(TIP['meter-red']) && points.includes(TIP['meter-black']);
  });
  if (between !== undefined) return say('log.betweenTips', { tool: say(`log.tools.${between.name}`) });
  const red = reached(seen, 'meter-red', functionsKnown);
  const black = reached(seen, 'meter-black', false);
  return red === null || black === null ? null : say('log.to', { red, black });
}

/** Where a lead of the meter reaches: the point its tip is on, or what something clipped to its tip is on. */
function reached({ leads }: Observation, end: MeterEnd, functionsKnown: boolean): string | null {
  const on = leads[end];
  if (on !== null) return describePoint(on, functionsKnown);
  for (const { name, ends } of BETWEEN) {
    const [one, other] = ends;
    const far = leads[one] === TIP[end] ? leads[other] : leads[other] === TIP[end] ? leads[one] : null;
    if (far !== null)
      return say('log.through', {
        point: describePoint(far, functionsKnown),
        tool: say(`log.tools.${name}`),
      });
  }
  return null;
}

/** The meter is on and stands between two points. */
export function meterMeasures(seen: Observation): boolean {
  return seen.meter.function !== 'off' && meterStands(seen, false) !== null;
}

/** The entry is first of all a reading of the meter. */
export function isOfMeter({ about, headline, seen }: LogEntry): boolean {
  return about === 'reading' && headline === 'meter' && meterMeasures(seen);
}
