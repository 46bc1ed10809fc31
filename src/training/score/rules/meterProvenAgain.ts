import type { LeadPoint } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { across, entriesWhere, inHgOf, onOhms, readsNow, showsKnownSource, tipsTogether } from '../setups.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** Volts that are as good as nothing where a good truck shows several. Common practice, no source. */
const DEAD_VOLTS = 0.5;
/** Leads that are whole read less than this on one another, ohms. Common practice, no source. */
const WHOLE_LEADS_OHMS = 2;

const GROUNDS: readonly LeadPoint[] = ['battery-negative', 'chassis-stud', 'ground-splice'];
const SENSE: readonly LeadPoint[] = ['cavity-3-back', 'controller-sense', 'harness-3'];
const FEED: readonly LeadPoint[] = ['cavity-1-back', 'controller-feed'];
const SUPPLY: readonly LeadPoint[] = ['battery-positive', 'fuse-in', 'fuse-out'];

/**
 * After a surprise the meter was proven once more, before the verdict. A surprise is a logged reading that a broken
 * lead would give just as well: nothing where a good truck shows volts, or over range where it shows ohms.
 */
export const meterProvenAgain: MethodRule = ({ moments, log, verdict }) => {
  const surprises = log.filter(
    ({ tick, about, seen }) => about === 'reading' && tick <= verdict.tick && isSurprise(seen),
  );
  const first = surprises[0];
  if (first === undefined) return NO_OCCASION;
  const proof = moments.find(
    ({ tick, seen }) => tick > first.tick && tick <= verdict.tick && provesMeter(seen),
  );
  if (proof === undefined) return missed(surprises.map(({ tick }) => tick));
  return kept(
    [first.tick, proof.tick],
    entriesWhere(log, ({ tick, seen }) => tick > first.tick && tick <= verdict.tick && provesMeter(seen)),
  );
};

function isSurprise(seen: Observation): boolean {
  if (!seen.meter.display.settled || !readsNow(seen)) return false;
  if (onOhms(seen)) {
    const coil = across(seen, ['unit-1'], ['unit-2']);
    const wire =
      across(seen, ['harness-1'], ['controller-feed']) || across(seen, ['harness-3'], ['controller-sense']);
    return (coil || wire) && seen.meter.display.digits.includes('OL');
  }
  if (seen.meter.function !== 'volts-dc' || seen.key === 'off') return false;
  const volts = seen.meter.display.value;
  if (volts === null || Math.abs(volts) >= DEAD_VOLTS) return false;
  if (across(seen, SUPPLY, GROUNDS)) return true;
  if (across(seen, FEED, GROUNDS)) return seen.reader.command === 'on';
  return across(seen, SENSE, GROUNDS) && inHgOf(seen.gauge.needleKPa) < DEAD_VOLTS;
}

function provesMeter(seen: Observation): boolean {
  const { value, settled } = seen.meter.display;
  const leadsWhole = onOhms(seen) && tipsTogether(seen) && settled && value !== null;
  return showsKnownSource(seen) || (leadsWhole && value < WHOLE_LEADS_OHMS);
}
