import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { entriesWhere, jumperFeeds, plainLeadFrom } from '../setups.ts';
import { standingAt } from '../standing.ts';
import { kept, type MethodRule, tooFew } from './RuleFinding.ts';

const TRIALS = 3;
/** Pulses come twice a second, so this long is more than three of them, heard or not. */
const PULSING_TICKS = secondsToTicks(3);

/**
 * The solenoid was switched on at least three times before the verdict, with feed and ground, and listened to: what
 * counts is the trial, not that there was a click to hear. Three clicks of the truck's unit count as well, however it was
 * fed. A duty.
 */
export const clickThreeTimes: MethodRule = ({ moments, happenings, log, verdict }) => {
  const trials: Tick[] = [];
  let pulsingSince: Tick | null = null;
  for (const { tick, action, before, seen } of moments) {
    if (tick > verdict.tick) break;
    if (action !== null && !isFed(before) && isFed(seen)) trials.push(tick);
    if (action?.kind === 'command-solenoid' && seen.plug.mated) {
      if (action.command === 'on') trials.push(tick);
      pulsingSince = action.command === 'pulse' ? tick : null;
    }
    if (pulsingSince !== null && tick - pulsingSince >= PULSING_TICKS && seen.reader.command === 'pulse') {
      return kept([pulsingSince, tick]);
    }
  }
  const shown = entriesWhere(log, ({ tick, heard }) => tick <= verdict.tick && heard.clicksOn > 0);
  if (trials.length >= TRIALS) return kept(trials, shown);
  const clicks = happenings
    .filter(({ kind, tick }) => kind === 'click-on' && tick <= verdict.tick)
    .filter(({ tick }) => (standingAt(moments, tick)?.unit ?? 'truck') === 'truck')
    .map(({ tick }) => tick);
  if (clicks.length >= TRIALS) return kept(clicks, shown);
  return tooFew(trials.length > clicks.length ? trials : clicks, TRIALS);
};

/** The parted unit's coil between the jumper and the plain ground lead. */
function isFed(seen: Observation): boolean {
  const fed = jumperFeeds(seen);
  const grounded = plainLeadFrom(seen, [
    'battery-negative',
    'chassis-stud',
    'ground-splice',
    'supply-negative',
  ]);
  // A solenoid pulls either way round.
  const across = (fed === 'unit-1' && grounded === 'unit-2') || (fed === 'unit-2' && grounded === 'unit-1');
  return seen.unit === 'truck' && across;
}
