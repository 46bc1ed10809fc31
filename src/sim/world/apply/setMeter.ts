import { err, ok } from '../../../base/Result.ts';
import type { MeterFunction } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Turns the meter's selector. */
export function setMeter({ bench }: ApplyContext, meterFunction: MeterFunction): Applied {
  if (bench.meterFunction === meterFunction) return err('already-so');
  bench.meterFunction = meterFunction;
  return ok(undefined);
}
