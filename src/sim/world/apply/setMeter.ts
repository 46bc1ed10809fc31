import { err, ok } from '../../../base/Result.ts';
import type { MeterFunction } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Turns the meter's selector. Whatever its keys had set is gone; the lead stays in its jack. */
export function setMeter({ bench }: ApplyContext, meterFunction: MeterFunction): Applied {
  if (bench.meterFunction === meterFunction) return err('already-so');
  bench.meterFunction = meterFunction;
  bench.meterRange = null;
  bench.meterHold = false;
  bench.meterExtremes = 'off';
  bench.meterRelative = false;
  return ok(undefined);
}
