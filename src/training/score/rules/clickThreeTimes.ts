import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import { coilFed, entriesWhere } from '../setups.ts';
import { standingAt } from '../standing.ts';
import type { Timeline } from '../Timeline.ts';
import { trialsAsked } from '../trials.ts';
import { kept, type MethodRule, tooFew } from './RuleFinding.ts';

const LEAST_TRIALS = 3;
/** Pulses come twice a second; heard or not, each is a trial. */
const PULSE_TICKS = secondsToTicks(0.5);

/**
 * The solenoid was switched on at least three times before the verdict, with feed and ground, and listened to: what
 * counts is the trial, not that there was a click to hear. Clicks of the truck's unit count as well, however it was
 * fed. A complaint that comes and goes asks for more trials, until one of them fails. The occasion is the first trial.
 */
export const clickThreeTimes: MethodRule = (job) => {
  const { happenings, log, moments, verdict, scenario } = job;
  const shown = entriesWhere(log, ({ tick, heard }) => tick <= verdict.tick && heard.clicksOn > 0);
  const tried = trialTicks(job);
  const clicks = happenings
    .filter(({ kind, tick }) => kind === 'click-on' && tick <= verdict.tick)
    .filter(({ tick }) => (standingAt(moments, tick)?.unit ?? 'truck') === 'truck')
    .map(({ tick }) => tick);
  const trials = tried.length > clicks.length ? tried : clicks;
  const failed = tried.length > clicks.length;
  const asked = failed ? LEAST_TRIALS : trialsAsked(scenario, 'energised');
  return trials.length >= asked ? kept(trials, shown) : tooFew(trials, asked);
};

function trialTicks({ moments, verdict }: Timeline): readonly Tick[] {
  const trials: Tick[] = [];
  let pulsedAt: Tick | null = null;
  for (const { tick, action, before, seen } of moments) {
    if (tick > verdict.tick) break;
    const fed = seen.unit === 'truck' && coilFed(seen);
    if (action !== null && fed && !(before.unit === 'truck' && coilFed(before))) trials.push(tick);
    if (pulsedAt !== null) {
      for (pulsedAt += PULSE_TICKS; pulsedAt < tick; pulsedAt += PULSE_TICKS) trials.push(pulsedAt);
      pulsedAt -= PULSE_TICKS;
    }
    if (action?.kind === 'command-solenoid') {
      if (seen.plug.mated && action.command !== 'off') trials.push(tick);
      pulsedAt = seen.plug.mated && action.command === 'pulse' ? tick : null;
    } else if (seen.reader.command !== 'pulse') pulsedAt = null;
  }
  return trials;
}
