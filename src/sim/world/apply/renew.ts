import { ok } from '../../../base/Result.ts';
import type { ItemId } from '../../devices/items.ts';
import { LEAD_ENDS, UNIT_PORTS } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/**
 * Fits a new item in place of the old. A new unit comes with its plug parted and its barbs bare: hoses, clamps and
 * plug are the fitter's to put back. A new fuse is pushed in.
 */
export function renew({ bench, rebuild }: ApplyContext, item: ItemId): Applied {
  bench.renewed.push(item);
  if (item === 'unit') layBareNewUnit(bench);
  if (item === 'fuse') bench.fuseFitted = true;
  rebuild();
  return ok(undefined);
}

function layBareNewUnit(bench: ApplyContext['bench']): void {
  bench.plugMated = false;
  for (const end of LEAD_ENDS) if (bench.leads[end]?.startsWith('unit-')) bench.leads[end] = null;
  for (const port of UNIT_PORTS) {
    bench.sites[port] = null;
    bench.clamps[port] = 'loose';
    bench.cracked[port] = false;
  }
  bench.plunger = 'rest';
  bench.plungerTravel = 0;
  bench.plungerHangs = false;
  bench.pulled = false;
  bench.vacuumSwitch = 'open';
  bench.contactClosed = false;
  bench.vent = 'open';
}
