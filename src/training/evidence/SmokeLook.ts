import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { SMOKE_PLACES, type SmokePlace } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { SetUp } from './setUp.ts';

const STOOD_TICKS: Tick = secondsToTicks(10);
/** It takes a minute through a hose and some minutes through a tank. */
const AFTER: readonly Tick[] = [60, 220].map(secondsToTicks);

/** Smoke, or none, that is taken in at a place, under the name of its set-up. */
export interface SmokeSeen {
  readonly at: SmokePlace;
  readonly setUp: string;
}

/** The eye on the smoke: smoke that has stood for a while is taken in where it is; where there is none, only time tells. */
export class SmokeLook {
  private readonly since = new Map<SmokePlace, Tick>();

  /** The hands have changed something. */
  beginAgain(): void {
    this.since.clear();
  }

  /** What is taken in at this look, in a set-up that has stood since a tick. `isKnown` tells what was taken in before. */
  *due(
    { smoke, tick }: Observation,
    setUp: SetUp,
    stoodSince: Tick,
    isKnown: (setUp: string) => boolean,
  ): Generator<SmokeSeen> {
    if (smoke.gas === 'off') return;
    const key = `${setUp.smoke} ${setUp.air} ${setUp.circuit}`;
    for (const at of SMOKE_PLACES) {
      if (!smoke.seenAt.includes(at)) this.since.delete(at);
      else if (!this.since.has(at)) this.since.set(at, tick);
      else if (tick - (this.since.get(at) ?? 0) >= STOOD_TICKS) yield { at, setUp: `smoke ${at} ${key}` };
    }
    for (const [after, ticks] of AFTER.entries()) {
      if (tick - stoodSince < ticks) continue;
      for (const at of SMOKE_PLACES) {
        if (smoke.seenAt.includes(at) || isKnown(`smoke ${at} ${key}`)) continue;
        yield { at, setUp: `no smoke ${after} ${at} ${key}` };
      }
    }
  }
}
