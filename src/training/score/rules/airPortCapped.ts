import type { Observation } from '../../../sim/world/Observation.ts';
import { airCapped, pumpOnUnit } from '../setups.ts';
import { isStroke } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * The air port was capped for the vacuum test. With the solenoid commanded on or the engine running it stays open on purpose:
 * that is the test of the vent seat. Finding out with a stroke that the cap is missing, and putting it on,
 * keeps the rule; drawing without it afterwards, or never capping, breaks it.
 */
export const airPortCapped: MethodRule = ({ moments, start, verdict }) => {
  if (start.surface.cappedForHold.length === 0) return NO_OCCASION;
  const strokes = moments.filter(
    (moment) =>
      moment.tick <= verdict.tick && isStroke(moment) && pumpOnUnit(moment.seen) && !isVentTest(moment.seen),
  );
  if (strokes.length === 0) return NO_OCCASION;
  const first = strokes.findIndex(({ seen }) => airCapped(seen));
  if (first < 0) return missed(strokes.map(({ tick }) => tick));
  const open = strokes.slice(first).filter(({ seen }) => !airCapped(seen));
  if (open.length > 0) return missed(open.map(({ tick }) => tick));
  return kept(strokes.slice(first).map(({ tick }) => tick));
};

function isVentTest({ key, reader }: Observation): boolean {
  return key === 'running' || reader.command === 'on';
}
