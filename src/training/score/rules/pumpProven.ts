import { secondsToTicks } from '../../../base/ticks.ts';
import { UNIT_PORTS } from '../../../sim/devices/places.ts';
import { entriesWhere, inHgOf, pumpPlugged, toolOn } from '../setups.ts';
import { standingAt } from '../standing.ts';
import type { Moment, Timeline } from '../Timeline.ts';
import { isStroke } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed } from './RuleFinding.ts';

const HOLD_TICKS = secondsToTicks(60);
const SETTLE_TICKS = secondsToTicks(2);
const LEAST_INHG = 10;
/** A sound pump loses less in a minute. Common practice, no source. */
const MOST_LOSS_INHG = 1;

/**
 * Pump, hose and gauge were drawn down on a closed end and held for a minute, before the pump was first used on the
 * unit. A duty. A pump that was tried and did not hold is not proven: it has to be renewed and tried again.
 */
export const pumpProven: MethodRule = (timeline) => {
  const { moments, verdict, log } = timeline;
  const firstUse = moments.find((moment) => isStroke(moment) && onUnit(moment)) ?? null;
  const deadline = firstUse === null ? verdict.tick : Math.min(firstUse.tick, verdict.tick);
  for (const [index, moment] of moments.entries()) {
    if (moment.tick > deadline) break;
    if (!isStroke(moment) || !isClosed(moment)) continue;
    const undone = moments.slice(index + 1).find((later) => isStroke(later) || !isClosed(later)) ?? null;
    const end = Math.min(undone?.tick ?? deadline, deadline);
    if (end - moment.tick < HOLD_TICKS) continue;
    const atFirst = gaugeAt(timeline, moment.tick + SETTLE_TICKS);
    if (atFirst >= LEAST_INHG && atFirst - gaugeAt(timeline, end - 1) <= MOST_LOSS_INHG) {
      return kept(
        [moment.tick, end],
        entriesWhere(log, ({ tick }) => tick > moment.tick && tick <= end),
      );
    }
  }
  return missed(firstUse !== null && firstUse.tick <= verdict.tick ? [firstUse.tick] : []);
};

function gaugeAt({ moments }: Timeline, tick: number): number {
  return inHgOf(standingAt(moments, tick)?.gauge.needleKPa ?? 0);
}

function onUnit({ seen }: Moment): boolean {
  return UNIT_PORTS.some((port) => toolOn(seen, 'pump-hose', port));
}

function isClosed({ seen }: Moment): boolean {
  return pumpPlugged(seen) && !seen.handPump.releaseOpen;
}
