import type { LogEntry } from '../../sitting/LogEntry.ts';
import { isOff } from '../setups.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * Before a unit was trusted again, what spoils units was looked for: fuel or charcoal in the open end of the canister hose (or of whichever hose brings it),
 * water or dirt in the filter. Looked at is enough; what is found is the repair's affair. The occasion is a unit fitted, or a
 * job behind whose fault such a cause stands.
 */
export const rootLookedFor: MethodRule = ({ scenario, moments, log }) => {
  const fitted = moments.filter(({ action }) => action?.kind === 'renew' && action.item === 'unit');
  const hasRoot = scenario.faults.some(({ root }) => root !== undefined);
  if (fitted.length === 0 && !hasRoot) return NO_OCCASION;
  const hose = log.find(looksIntoHose);
  const filter = log.find((entry) => placeOf(entry) === 'filter');
  if (hose === undefined || filter === undefined) return missed(fitted.map(({ tick }) => tick));
  return kept([hose.tick, filter.tick], [hose.id, filter.id]);
};

function placeOf({ about, seen }: LogEntry): string | null {
  const finding = about === 'finding' ? seen.findings.at(-1) : undefined;
  return finding?.how === 'look' ? finding.at : null;
}

/** The hose is off the unit and nothing is in its end. */
function looksIntoHose(entry: LogEntry): boolean {
  const at = placeOf(entry);
  const { sites, surface } = entry.seen;
  const { hose, end, seenAt } = surface.spoiledBy;
  const open = isOff(entry.seen, hose) && sites[end] === null;
  return open && seenAt.some((place) => place === at);
}
