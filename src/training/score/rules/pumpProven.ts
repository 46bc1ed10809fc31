import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import { type AirSite, UNIT_PORTS } from '../../../sim/devices/places.ts';
import { entriesWhere, inHgOf, pumpPlugged, toolOn } from '../setups.ts';
import { standingAt } from '../standing.ts';
import type { Moment, Timeline } from '../Timeline.ts';
import { isStroke } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

const HOLD_TICKS = secondsToTicks(60);
const SETTLE_TICKS = secondsToTicks(2);
const LEAST_INHG = 10;
/** A sound pump loses less in a minute. Common practice, no source. */
const MOST_LOSS_INHG = 1;
/** A needle nearer to zero than half a small division stands at zero. */
const ZERO_INHG = 0.5;

/** Where the pump draws on the truck. */
const ON_TRUCK: readonly AirSite[] = [...UNIT_PORTS, 'canister-hose-end', 'air-hose-end', 'engine-hose-end'];

/**
 * Pump, hose and gauge were drawn down on a closed end with the same hose and cone and held for a minute, and the gauge
 * was seen to come back to zero, before the pump was first used on the truck. The occasion is that use. A pump that was tried
 * and did not hold is not proven: it has to be renewed and tried again.
 */
export const pumpProven: MethodRule = (job) => {
  const { moments, verdict, log } = job;
  const firstUse = moments.find((moment) => isStroke(moment) && onTruck(moment)) ?? null;
  const deadline = firstUse?.tick ?? verdict.tick;
  for (const [index, moment] of moments.entries()) {
    if (moment.tick > deadline) break;
    if (!isStroke(moment) || !isClosed(moment)) continue;
    const undone = moments.slice(index + 1).find((later) => isStroke(later) || !isClosed(later)) ?? null;
    const end = Math.min(undone?.tick ?? deadline, deadline);
    if (end - moment.tick < HOLD_TICKS) continue;
    const atFirst = gaugeAt(job, moment.tick + SETTLE_TICKS);
    const holds = atFirst >= LEAST_INHG && atFirst - gaugeAt(job, end - 1) <= MOST_LOSS_INHG;
    const zero = zeroSeen(job, end, deadline);
    if (holds && zero !== null) {
      return kept(
        [moment.tick, zero],
        entriesWhere(log, ({ tick }) => tick > moment.tick && tick <= zero),
      );
    }
  }
  return firstUse === null ? NO_OCCASION : missed([firstUse.tick]);
};

function gaugeAt({ moments }: Timeline, tick: number): number {
  return inHgOf(standingAt(moments, tick)?.gauge.needleKPa ?? 0);
}

/** When the vacuum was let off and the needle was back at zero; null where it was not, until the pump was used. */
function zeroSeen({ moments }: Timeline, from: Tick, until: Tick): Tick | null {
  const zero = moments.find(
    ({ tick, seen }) =>
      tick >= from &&
      tick <= until &&
      (seen.handPump.releaseOpen || !pumpPlugged(seen)) &&
      inHgOf(seen.gauge.needleKPa) < ZERO_INHG,
  );
  return zero?.tick ?? null;
}

function onTruck({ seen }: Moment): boolean {
  return ON_TRUCK.some((site) => toolOn(seen, 'pump-hose', site));
}

function isClosed({ seen }: Moment): boolean {
  return pumpPlugged(seen) && !seen.handPump.releaseOpen;
}
