import type { LeadEnd, SmokeGas } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { describeEnd } from '../../text/describePoint.ts';
import { fixed, inchesOfWater, waterDigits } from '../../text/format.ts';
import { say } from '../../text/translate.ts';

/** A lead's end; a lamp's end also says how the lamp is while both ends are on something. */
export function endName(end: LeadEnd, seen: Observation): string {
  const name = describeEnd(end, seen.leads[end]);
  const { leads } = seen;
  if (end.startsWith('lamp-') && leads['lamp-clip'] !== null && leads['lamp-tip'] !== null) {
    return say(`controls.${lampWord(seen.testLamp.glow)}`, { end: name });
  }
  if (end.startsWith('led-') && leads['led-clip'] !== null && leads['led-tip'] !== null) {
    return say(`controls.${LED_WORDS[seen.ledTester.lit]}`, { end: name });
  }
  return name;
}

const LED_WORDS = { dark: 'ledDark', forward: 'ledForward', reverse: 'ledReverse' } as const;

/** Below this an eye takes the lamp to be dark; above the other it is simply lit. */
const GLOW_SEEN = 0.04;
const GLOW_BRIGHT = 0.6;

/** What an eye makes of the test lamp. */
export function lampWord(glow: number): 'lampDark' | 'lampGlows' | 'lampBright' {
  if (glow < GLOW_SEEN) return 'lampDark';
  return glow < GLOW_BRIGHT ? 'lampGlows' : 'lampBright';
}

/** The bench supply and everything in the compartments that is worked where it stands. */
export type ShelfThing =
  | {
      readonly kind:
        | 'supply-switch'
        | 'bleed-less'
        | 'bleed-more'
        | 'manometer'
        | 'refill'
        | 'smoke-less'
        | 'smoke-more'
        | 'smoke-gauge'
        | 'eye'
        | 'ear'
        | 'drag-gauge';
    }
  | { readonly kind: 'smoke-gas'; readonly of: SmokeGas };

/** The bench supply and what stands on the tool shelf. */
export function shelfName(name: ShelfThing, seen: Observation): string {
  const { manometer, smoke } = seen;
  const bleed = { percent: fixed(seen.bleed * 100, 0) };
  const set = { kPa: fixed(smoke.setKPa, 1), inches: inchesOfWater(smoke.setKPa) };
  switch (name.kind) {
    case 'supply-switch':
      return supplyName(seen.supply);
    case 'bleed-less':
      return say('controls.bleedLess', bleed);
    case 'bleed-more':
      return say('controls.bleedMore', bleed);
    case 'manometer':
      if (manometer.kPa === null) return say('controls.manometerEmpty');
      return say('controls.manometer', { digits: waterDigits(manometer.kPa) });
    case 'refill':
      return say('controls.refill');
    case 'smoke-gas':
      return say('controls.gas', { gas: say(`smokeGases.${name.of}`) });
    case 'smoke-less':
      return say('controls.smokeLess', set);
    case 'smoke-more':
      return say('controls.smokeMore', set);
    case 'smoke-gauge':
      return say('controls.smokeGauge', {
        kPa: fixed(smoke.gaugeKPa, 1),
        inches: inchesOfWater(smoke.gaugeKPa),
        percent: fixed(smoke.flow * 100, 0),
      });
    case 'eye':
      return say('controls.eye');
    case 'ear':
      return say('controls.ear');
    case 'drag-gauge':
      return say('controls.dragGauge');
  }
}

function supplyName({ on, volts, amps, limiting }: Observation['supply']): string {
  if (!on) return say('controls.supplyOff');
  if (limiting) return say('controls.supplyLimiting', { amps: fixed(amps, 2) });
  return say('controls.supplyOn', { volts: fixed(volts, 1), amps: fixed(amps, 2) });
}
