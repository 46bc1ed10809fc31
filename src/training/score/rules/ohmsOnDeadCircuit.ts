import type { LeadPoint } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { drivesCurrent, jumperFeeds, metered, plainLeadFrom } from '../setups.ts';
import { type MethodRule, unlessBroken } from './RuleFinding.ts';

/** Ohms, continuity and diode were read only where nothing else drove the circuit. */
export const ohmsOnDeadCircuit: MethodRule = ({ moments }) => {
  const readings = moments.filter(({ seen }) => drivesCurrent(seen) && onCircuit(seen));
  const acts = readings.filter(({ action }) => action !== null);
  const live = acts.filter(({ seen }) => isLive(seen));
  return unlessBroken(
    acts.map(({ tick }) => tick),
    live.map(({ tick }) => tick),
  );
};

const isUnitTerminal = (point: LeadPoint): boolean => point.startsWith('unit-');
const isTip = (point: LeadPoint): boolean => point.endsWith('-tip');

/** Both tips are on the truck or the unit, not on one another. */
function onCircuit(seen: Observation): boolean {
  const pair = metered(seen);
  return pair !== null && !pair.some(isTip);
}

function isLive(seen: Observation): boolean {
  const pair = metered(seen);
  if (pair === null) return false;
  if (pair.every(isUnitTerminal)) {
    const fed = jumperFeeds(seen) ?? plainLeadFrom(seen, ['battery-positive', 'supply-positive']);
    return fed !== null && isUnitTerminal(fed);
  }
  if (seen.supply.on && pair.includes('supply-positive')) return true;
  return seen.key !== 'off' || pair.includes('battery-positive') || jumperFeeds(seen) !== null;
}
