import { entriesWhere, metered, onOhms, tipsTogether } from '../setups.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** Below this the leads are a part of the reading that counts: they have 0.2 ohms. Common practice, no source. */
const LOW_OHMS = 20;

/**
 * The resistance of the meter's own leads was written down, or taken as zero, before the first low ohms were. The occasion is
 * a logged reading below 20 ohms.
 */
export const leadsNoted: MethodRule = ({ moments, log }) => {
  const low = log.filter(({ about, seen }) => {
    const { value, settled } = seen.meter.display;
    if (about !== 'reading' || !onOhms(seen) || metered(seen) === null || tipsTogether(seen)) return false;
    return settled && value !== null && value < LOW_OHMS;
  });
  const first = low[0];
  if (first === undefined) return NO_OCCASION;
  const noted = log.filter(({ tick, seen }) => tick < first.tick && onOhms(seen) && tipsTogether(seen));
  const zeroed = moments.filter(
    ({ tick, action, seen }) =>
      tick < first.tick &&
      action?.kind === 'meter-relative' &&
      action.on &&
      onOhms(seen) &&
      tipsTogether(seen),
  );
  const ticks = [...noted, ...zeroed].map(({ tick }) => tick);
  if (ticks.length === 0) return missed(low.map(({ tick }) => tick));
  return kept(
    ticks,
    entriesWhere(noted, () => true),
  );
};
