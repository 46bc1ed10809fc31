import { type AirSite, LEAD_ENDS, UNIT_PORTS } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import type { Timeline } from '../Timeline.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** What takes the bench apart. */
const TAKES_APART: readonly string[] = [
  'part-plug',
  'insert-pin',
  'place-lead',
  'pull-fuse',
  'fit',
  'take-off',
  'clamp',
  'renew',
  'swap-unit',
  'switch-supply',
  'set-smoke',
];

/** Sites of the truck. What is on the hoses of the tools is the learner's affair. */
const TRUCK_SITES: readonly AirSite[] = [
  ...UNIT_PORTS,
  'canister-hose-end',
  'air-hose-end',
  'engine-hose-end',
];

/**
 * The truck's own unit, hoses, clamps, plug, fuse and key stand at the end as they stood when the job began; no lead is
 * left on, supply and smoke machine are off.
 */
export const benchRestored: MethodRule = (timeline) => {
  const { moments, end } = timeline;
  if (!moments.some(({ action }) => action !== null && TAKES_APART.includes(action.kind))) return NO_OCCASION;
  return isRestored(timeline) ? kept([end.tick]) : missed([end.tick]);
};

export function isRestored({ start, end }: Timeline): boolean {
  const clamped = start.surface.ports.every((port) => end.clamps[port] === start.clamps[port]);
  const leadsOff = LEAD_ENDS.every((lead) => end.leads[lead] === null);
  const pinsOut = end.plug.pins.every((pin) => !pin);
  const plugged = end.plug.mated === start.plug.mated && end.fuse.fitted === start.fuse.fitted;
  const toolsOff = !end.supply.on && end.smoke.gas === 'off';
  const ownUnit = end.unit === 'truck';
  return (
    sameSites(start, end) &&
    clamped &&
    leadsOff &&
    pinsOut &&
    plugged &&
    toolsOff &&
    ownUnit &&
    end.key === 'off'
  );
}

function sameSites(start: Observation, end: Observation): boolean {
  return TRUCK_SITES.every((site) => start.sites[site] === end.sites[site]);
}
