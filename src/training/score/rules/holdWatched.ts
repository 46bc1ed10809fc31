import { secondsToTicks } from '../../../base/ticks.ts';
import { entriesWhere } from '../setups.ts';
import { vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed } from './RuleFinding.ts';

const HOLD_TICKS = secondsToTicks(20);
/** A hold test starts from a vacuum worth the name, inHg. */
const LEAST_INHG = 3;

/**
 * The capped unit was drawn down and left alone for twenty seconds before the verdict, or until its vacuum had gone by
 * itself. A duty.
 */
export const holdWatched: MethodRule = (timeline) => {
  const { log, verdict } = timeline;
  const held = vacuumBouts(timeline, 0, verdict.tick).find(
    ({ capped, peakInHg, ended, to, lastStroke }) =>
      capped && peakInHg >= LEAST_INHG && (ended === 'gone' || to - lastStroke >= HOLD_TICKS),
  );
  if (held === undefined) return missed();
  return kept(
    [held.lastStroke, held.to],
    entriesWhere(log, ({ tick }) => tick > held.lastStroke && tick <= held.to),
  );
};
