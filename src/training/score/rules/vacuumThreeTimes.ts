import { entriesWhere, pumpOnUnit, watchesSense } from '../setups.ts';
import { trialsAsked } from '../trials.ts';
import { vacuumBouts } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, tooFew } from './RuleFinding.ts';

const LEAST_TRIALS = 3;

/**
 * Three separate vacuum trials before the verdict, air port capped, the meter on the sense circuit in each or what the reader
 * says of it written down. What the switch did in them does not matter here; but where the complaint comes and goes, more are
 * asked for until one of them fails. The occasion is the first trial, capped or not.
 */
export const vacuumThreeTimes: MethodRule = (job) => {
  const { log, verdict, scenario } = job;
  const tried = vacuumBouts(job, 0, verdict.tick);
  const bouts = tried.filter(
    ({ capped, senseWatched, ended }) => capped && senseWatched && ended !== 'verdict',
  );
  const open = tried.filter(
    ({ capped, strokes }) => !capped && strokes.some(({ seen }) => watchesSense(seen)),
  );
  if (bouts.length === 0 && open.length > 0) return missed(open.map(({ from }) => from));
  const shown = entriesWhere(log, ({ tick, seen }) => tick <= verdict.tick && pumpOnUnit(seen));
  const failed = bouts.some(({ under }) => !under.includes('closed'));
  const asked = failed ? LEAST_TRIALS : trialsAsked(scenario, 'drawn');
  const trials = bouts.map(({ from }) => from);
  return trials.length < asked ? tooFew(trials, asked) : kept(trials, shown);
};
