import { entriesWhere, metered, onKnownSource, showsKnownSource } from '../setups.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * The meter showed the voltage of a known source before anything else that it read was logged. The occasion is any use
 * of the meter before the verdict: without a proof every later reading rests on a lead nobody tried.
 */
export const meterProven: MethodRule = ({ moments, log, verdict }) => {
  const before = moments.filter(({ tick }) => tick <= verdict.tick);
  const used = before.some(({ seen }) => seen.meter.function !== 'off' && metered(seen) !== null);
  if (!used) return NO_OCCASION;
  const proof = before.find(({ seen }) => showsKnownSource(seen));
  if (proof === undefined) return missed();
  // A first try at the source itself, logged before it had settled, rests on nothing untried.
  const early = log.filter(({ tick, about, seen }) => {
    const reads = about === 'reading' && seen.meter.function !== 'off' && metered(seen) !== null;
    return reads && !onKnownSource(seen) && tick < proof.tick;
  });
  if (early.length > 0) return missed(early.map(({ tick }) => tick));
  return kept(
    [proof.tick],
    entriesWhere(log, ({ seen }) => showsKnownSource(seen)),
  );
};
