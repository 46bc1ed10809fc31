import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { entriesWhere, jumperFeeds, plainLeadFrom } from '../setups.ts';
import { kept, type MethodRule, missed } from './RuleFinding.ts';

const TRIALS = 3;
/** Pulses come twice a second, so this long is more than three of them, heard or not. */
const PULSING_TICKS = secondsToTicks(3);

/**
 * The solenoid was switched on at least three times before the verdict, with feed and ground, and listened to: what
 * counts is the trial, not that there was a click to hear. A duty.
 */
export const clickThreeTimes: MethodRule = ({ moments, log, verdict }) => {
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
  return trials.length >= TRIALS ? kept(trials, shown) : missed();
};

/** The parted unit's coil between the jumper and the plain ground lead. */
function isFed(seen: Observation): boolean {
  return (
    seen.unit === 'truck' &&
    jumperFeeds(seen) === 'unit-1' &&
    plainLeadFrom(seen, ['battery-negative', 'chassis-stud', 'ground-splice', 'supply-negative']) === 'unit-2'
  );
}
