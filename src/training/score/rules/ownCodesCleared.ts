import type { Tick } from '../../../base/ticks.ts';
import type { TroubleCode } from '../../../sim/devices/controller/troubleCodes.ts';
import type { Timeline } from '../Timeline.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** A code that came while the truck stood on the bench, and when it was first there to be read. */
interface OwnCode {
  readonly code: TroubleCode;
  readonly tick: Tick;
}

/**
 * Codes that came on the bench, not on a drive, were read while they stood and then cleared: the customer's codes are on
 * the work order, and these are of one's own making. The occasion is such a code. A code that the order names already
 * cannot be told apart and is left out, and so is one that was never stored and had gone by itself.
 */
export const ownCodesCleared: MethodRule = (job) => {
  const { log, moments } = job;
  const own = ownCodes(job).filter(({ code, tick }) => !wentByItself(job, code, tick));
  if (own.length === 0) return NO_OCCASION;
  const cleared = moments.filter(
    ({ action }) =>
      action?.kind === 'clear-codes' || (action?.kind === 'renew' && action.item === 'controller'),
  );
  const told = own.map(({ code, tick }) => {
    const clear = cleared.find((moment) => moment.tick > tick);
    const read = log.find(
      (entry) =>
        entry.about === 'codes' &&
        entry.tick >= tick &&
        entry.tick <= (clear?.tick ?? -1) &&
        entry.seen.reader.codes.some((shown) => shown.code === code),
    );
    return { tick, clear, read };
  });
  const left = told.filter(({ clear, read }) => clear === undefined || read === undefined);
  if (left.length > 0) return missed(left.map(({ tick }) => tick));
  return kept(
    told.flatMap(({ clear }) => (clear === undefined ? [] : [clear.tick])),
    [...new Set(told.flatMap(({ read }) => (read === undefined ? [] : [read.id])))],
  );
};

/** Whether a code had gone, with nobody clearing it, when the reader was last awake. */
function wentByItself({ moments }: Timeline, code: TroubleCode, since: Tick): boolean {
  if (moments.some(({ tick, action }) => tick > since && action?.kind === 'clear-codes')) return false;
  const last = moments.filter(({ seen }) => seen.reader.awake).at(-1);
  return last !== undefined && !last.seen.reader.codes.some((shown) => shown.code === code);
}

function ownCodes({ scenario, moments }: Timeline): readonly OwnCode[] {
  const known = new Set<string>(scenario.workOrder.codes.map(({ code }) => code));
  const own: OwnCode[] = [];
  // What the reader shows when it first wakes, or first after a drive, came from the road.
  let fromRoad = true;
  for (const { tick, action, seen } of moments) {
    if (action?.kind === 'road-test') fromRoad = true;
    if (!seen.reader.awake) continue;
    for (const { code } of seen.reader.codes) {
      if (known.has(code)) continue;
      known.add(code);
      if (!fromRoad) own.push({ code, tick });
    }
    fromRoad = false;
  }
  return own;
}
