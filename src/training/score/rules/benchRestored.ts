import { LEAD_ENDS, UNIT_PORTS } from '../../../sim/devices/places.ts';
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
];

/** Hoses, clamps, plug, fuse and key stand at the end as they stood when the job began, and no lead is left on. */
export const benchRestored: MethodRule = (timeline) => {
  const { moments, end } = timeline;
  if (!moments.some(({ action }) => action !== null && TAKES_APART.includes(action.kind))) return NO_OCCASION;
  return isRestored(timeline) ? kept([end.tick]) : missed([end.tick]);
};

export function isRestored({ start, end }: Timeline): boolean {
  const clamped = UNIT_PORTS.every((port) => end.clamps[port] === start.clamps[port]);
  const leadsOff = LEAD_ENDS.every((lead) => end.leads[lead] === null);
  const pinsOut = end.plug.pins.every((pin) => !pin);
  const plugged = end.plug.mated === start.plug.mated && end.fuse.fitted === start.fuse.fitted;
  return sameSites(start, end) && clamped && leadsOff && pinsOut && plugged && end.key === 'off';
}

function sameSites(start: Observation, end: Observation): boolean {
  const sites = Object.keys(start.sites) as (keyof Observation['sites'])[];
  // What is on the pump's own hose is the learner's affair.
  return sites.every((site) => site === 'pump-hose-end' || start.sites[site] === end.sites[site]);
}
