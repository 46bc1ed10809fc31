import { secondsToTicks } from '../../../base/ticks.ts';
import { entriesWhere } from '../setups.ts';
import { vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

const HOLD_TICKS = secondsToTicks(20);
/** A hold test starts from a vacuum worth the name, inHg, or from an honest try at one. Common practice, no source. */
const LEAST_INHG = 8;
const HONEST_STROKES = 3;

/**
 * The capped unit, drawn down far, was left alone for twenty seconds before the verdict, or until its vacuum had gone by
 * itself. Kept means watched; whether the unit held is the verdict's affair. The occasion is such a draw: a stroke or two for
 * the switch alone is none.
 */
export const holdWatched: MethodRule = (job) => {
  const { log, verdict } = job;
  const drawn = vacuumBouts(job, 0, verdict.tick).filter(
    ({ capped, direct, strokes, peakInHg }) =>
      capped && direct && (peakInHg >= LEAST_INHG || strokes.length >= HONEST_STROKES),
  );
  if (drawn.length === 0) return NO_OCCASION;
  const held = drawn.find(({ ended, to, lastStroke }) => ended === 'gone' || to - lastStroke >= HOLD_TICKS);
  if (held === undefined) return missed(drawn.map(({ to }) => to));
  return kept(
    [held.lastStroke, held.to],
    entriesWhere(log, ({ tick }) => tick > held.lastStroke && tick <= held.to),
  );
};
