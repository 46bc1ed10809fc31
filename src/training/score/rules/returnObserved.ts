import { secondsToTicks } from '../../../base/ticks.ts';
import { entriesWhere, inHgOf } from '../setups.ts';
import { switchSeen, vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** The look back at the meter belongs to the trial for this long after it. */
const AFTER_TICKS = secondsToTicks(60);
const LET_OFF_INHG = 0.5;

/**
 * After a trial the vacuum was let off and the sense circuit read again, settled, before the verdict; whether it came back
 * does not matter here. The occasion is a trial of the switch.
 */
export const returnObserved: MethodRule = (job) => {
  const { moments, log, verdict } = job;
  const trials = vacuumBouts(job, 0, verdict.tick).filter(
    ({ capped, senseWatched }) => capped && senseWatched,
  );
  if (trials.length === 0) return NO_OCCASION;
  for (const bout of trials) {
    if (bout.ended !== 'released' && bout.ended !== 'gone') continue;
    const back = moments.find(
      (moment) =>
        moment.tick > bout.to &&
        moment.tick <= Math.min(bout.to + AFTER_TICKS, verdict.tick) &&
        inHgOf(moment.seen.gauge.needleKPa) < LET_OFF_INHG &&
        switchSeen(moment) !== null,
    );
    if (back === undefined) continue;
    const entries = entriesWhere(
      log,
      ({ tick }) => tick >= bout.to && tick <= bout.to + AFTER_TICKS && tick <= verdict.tick,
    );
    return kept([bout.to, back.tick], entries);
  }
  return missed(trials.map(({ to }) => to));
};
