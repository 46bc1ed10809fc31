import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import type { LeadPoint } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { jumperFeeds } from '../setups.ts';
import { type MethodRule, unlessBroken } from './RuleFinding.ts';

const LONGEST_TICKS = secondsToTicks(10);

/** Points of the truck's own wires, which end inside the controller. */
const INTO_TRUCK = /^(cavity|harness|front|wire|slip|controller)-/;

/**
 * The jumper fed the unit with the plug apart, made at the unit first and by its own switch, ten seconds at most. On the
 * meter alone, to be proven itself, it feeds nothing.
 */
export const jumperShortAndFused: MethodRule = ({ moments, end }) => {
  const occasions: Tick[] = [];
  const broken: Tick[] = [];
  let since: Tick | null = null;
  for (const { tick, action, before, seen } of moments) {
    const was = fedByJumper(before);
    const feeds = fedByJumper(seen);
    if (action !== null && was === null && feeds !== null) {
      occasions.push(tick);
      since = tick;
      const intoPlug = INTO_TRUCK.test(feeds);
      if (action.kind !== 'switch-jumper' || seen.plug.mated || intoPlug) broken.push(tick);
    }
    if (since !== null && tick - since > LONGEST_TICKS) {
      broken.push(since);
      since = null;
    }
    if (was !== null && feeds !== was && action !== null && action.kind !== 'switch-jumper')
      broken.push(tick);
    if (feeds === null) since = null;
  }
  if (since !== null && end.tick - since > LONGEST_TICKS) broken.push(since);
  return unlessBroken(occasions, broken);
};

function fedByJumper(seen: Observation): LeadPoint | null {
  const far = jumperFeeds(seen);
  return far?.endsWith('-tip') ? null : far;
}
