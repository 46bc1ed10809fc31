import { secondsToTicks } from '../../../base/ticks.ts';
import { entriesWhere, inHgOf, senseReading } from '../setups.ts';
import { vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed } from './RuleFinding.ts';

/** The look back at the meter belongs to the trial for this long after it. */
const AFTER_TICKS = secondsToTicks(60);
const LET_OFF_INHG = 0.5;

/**
 * After a trial the vacuum was let off and the sense circuit read again, settled, before the verdict. A duty; whether
 * it came back does not matter here.
 */
export const returnObserved: MethodRule = (timeline) => {
  const { moments, log, verdict } = timeline;
  for (const bout of vacuumBouts(timeline, 0, verdict.tick)) {
    if (!bout.capped || !bout.senseWatched || (bout.ended !== 'released' && bout.ended !== 'gone')) continue;
    const back = moments.find(
      ({ tick, seen }) =>
        tick > bout.to &&
        tick <= Math.min(bout.to + AFTER_TICKS, verdict.tick) &&
        inHgOf(seen.gauge.needleKPa) < LET_OFF_INHG &&
        senseReading(seen) !== null,
    );
    if (back === undefined) continue;
    const entries = entriesWhere(
      log,
      ({ tick }) => tick >= bout.to && tick <= bout.to + AFTER_TICKS && tick <= verdict.tick,
    );
    return kept([bout.to, back.tick], entries);
  }
  return missed();
};
