import { secondsToTicks } from '../../../base/ticks.ts';
import { entriesWhere } from '../setups.ts';
import { vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed } from './RuleFinding.ts';

const HOLD_TICKS = secondsToTicks(20);
/** A hold test starts from a vacuum worth the name, inHg, or from an honest try at one. */
const LEAST_INHG = 3;
const HONEST_STROKES = 3;

/**
 * The capped unit was drawn down and left alone for twenty seconds before the verdict, or until its vacuum had gone by
 * itself. Kept means watched; whether the unit held is the verdict's affair. A duty.
 */
export const holdWatched: MethodRule = (timeline) => {
  const { log, verdict } = timeline;
  const held = vacuumBouts(timeline, 0, verdict.tick).find(
    ({ capped, strokes, peakInHg, ended, to, lastStroke }) =>
      capped &&
      (peakInHg >= LEAST_INHG || strokes.length >= HONEST_STROKES) &&
      (ended === 'gone' || to - lastStroke >= HOLD_TICKS),
  );
  if (held === undefined) return missed();
  return kept(
    [held.lastStroke, held.to],
    entriesWhere(log, ({ tick }) => tick > held.lastStroke && tick <= held.to),
  );
};
