import { UNIT_PORTS } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { pumpOnUnit } from '../setups.ts';
import { isStroke } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * Clamps on the unit were hand tight when vacuum was drawn on it, and none was ever over-tightened. As with the cap, a
 * loose clamp found by a stroke and put right keeps the rule.
 */
export const clampsHandTight: MethodRule = ({ moments }) => {
  const forced = moments.filter(({ action }) => action?.kind === 'clamp' && action.setting === 'over-tight');
  if (forced.length > 0) return missed(forced.map(({ tick }) => tick));
  const strokes = moments.filter((moment) => isStroke(moment) && pumpOnUnit(moment.seen));
  if (strokes.length === 0) return NO_OCCASION;
  const first = strokes.findIndex(({ seen }) => handTight(seen));
  const loose = first < 0 ? strokes : strokes.slice(first).filter(({ seen }) => !handTight(seen));
  if (loose.length > 0) return missed(loose.map(({ tick }) => tick));
  return kept(strokes.slice(first).map(({ tick }) => tick));
};

/** Canister and air port: the two in the path of the vacuum test. */
function handTight(seen: Observation): boolean {
  return UNIT_PORTS.every(
    (port) => port === 'engine-port' || seen.sites[port] === null || seen.clamps[port] === 'hand-tight',
  );
}
