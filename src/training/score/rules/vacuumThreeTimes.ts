import { entriesWhere, pumpOnUnit } from '../setups.ts';
import { vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, tooFew } from './RuleFinding.ts';

const TRIALS = 3;

/**
 * Three separate vacuum trials before the verdict, air port capped, the meter on the sense circuit in each. What the
 * switch did in them does not matter here. A duty.
 */
export const vacuumThreeTimes: MethodRule = (timeline) => {
  const { log, verdict } = timeline;
  const bouts = vacuumBouts(timeline, 0, verdict.tick).filter(
    ({ capped, senseWatched, ended }) => capped && senseWatched && ended !== 'verdict',
  );
  const shown = entriesWhere(log, ({ tick, seen }) => tick <= verdict.tick && pumpOnUnit(seen));
  const trials = bouts.map(({ from }) => from);
  return trials.length < TRIALS ? tooFew(trials, TRIALS) : kept(trials, shown);
};
