import type { Observation } from '../sim/world/Observation.ts';
import { say } from '../text/translate.ts';
import { lampWord } from '../ui/mirror/toolNames.ts';

type SmokePlace = Observation['smoke']['seenAt'][number];

/** What an eye would notice change on the bench, besides needles and digits. */
export interface Told {
  readonly dash: boolean;
  readonly lamp: ReturnType<typeof lampWord>;
  readonly led: Observation['ledTester']['lit'];
  readonly smoke: readonly SmokePlace[];
  readonly limiting: boolean;
  readonly meterBattery: boolean;
}

export function toldOf(seen: Observation): Told {
  return {
    dash: seen.dashLamp,
    lamp: lampWord(seen.testLamp.glow),
    led: seen.ledTester.lit,
    smoke: seen.smoke.seenAt,
    limiting: seen.supply.limiting,
    meterBattery: seen.meter.batteryLow,
  };
}

const LAMP = { lampDark: 'told.lampDark', lampGlows: 'told.lampGlows', lampBright: 'told.lampLit' } as const;
const LED = { dark: 'told.ledDark', forward: 'told.ledForward', reverse: 'told.ledReverse' } as const;

/** A sentence for each thing that changed from one moment to the next. */
export function changesTold(before: Told, now: Told): readonly string[] {
  const fresh = now.smoke.filter((place) => !before.smoke.includes(place));
  return [
    ...(now.dash !== before.dash ? [say(now.dash ? 'dash.wentOn' : 'dash.wentOff')] : []),
    ...(now.lamp !== before.lamp ? [say(LAMP[now.lamp])] : []),
    ...(now.led !== before.led ? [say(LED[now.led])] : []),
    ...(fresh.length > 0 ? [say('told.smokeAt', { places: placesWords(fresh) })] : []),
    ...(now.smoke.length === 0 && before.smoke.length > 0 ? [say('told.smokeGone')] : []),
    ...(now.limiting && !before.limiting ? [say('told.limiting')] : []),
    ...(now.meterBattery && !before.meterBattery ? [say('told.meterBattery')] : []),
  ];
}

export function placesWords(places: readonly SmokePlace[]): string {
  return places.map((place) => say(`smokePlaces.${place}`)).join(', ');
}
