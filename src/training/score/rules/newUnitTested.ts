import { UNIT_PORTS } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { across, coilFed, entriesWhere, onOhms, toolOn } from '../setups.ts';
import type { Moment } from '../Timeline.ts';
import { isStroke } from '../vacuumBouts.ts';
import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/**
 * The new unit was tested on the bench before one was fitted: the known-good unit out of the cupboard, plug apart, drawn down,
 * made to click by the jumper, or measured. The occasion is fitting a unit.
 */
export const newUnitTested: MethodRule = ({ moments, log }) => {
  const fitted = moments.filter(({ action }) => action?.kind === 'renew' && action.item === 'unit');
  const first = fitted[0];
  if (first === undefined) return NO_OCCASION;
  const tests = moments.filter((moment) => moment.tick < first.tick && isTest(moment));
  if (tests.length === 0) return missed(fitted.map(({ tick }) => tick));
  return kept(
    tests.map(({ tick }) => tick),
    entriesWhere(log, ({ tick, seen }) => tick < first.tick && seen.unit === 'known-good'),
  );
};

function isTest(moment: Moment): boolean {
  const { seen } = moment;
  if (seen.unit !== 'known-good' || seen.plug.mated) return false;
  const drawn = isStroke(moment) && UNIT_PORTS.some((port) => toolOn(seen, 'pump-hose', port));
  return drawn || coilFed(seen) || isMeasured(seen);
}

function isMeasured(seen: Observation): boolean {
  if (!onOhms(seen) || !seen.meter.display.settled) return false;
  return across(seen, ['unit-1', 'unit-3'], ['unit-2']);
}
