import { rangesOf } from '../../devices/meter/ranges.ts';
import type { MeterFunction } from '../../devices/places.ts';
import type { MeterFace } from './TestBench.ts';

/**
 * Half-width of the meter's error at a reading, in volts, ohms or amps: ±(per cent of reading + counts) of the range in
 * which it was taken, as its digits show it. 0 when nothing is displayed.
 */
export function meterHalfWidth(meterFunction: MeterFunction, display: MeterFace): number {
  if (display.value === null) return 0;
  const decimals = display.digits.split('.')[1]?.length ?? 0;
  const range = rangesOf(meterFunction).find((one) => one.unit === display.unit && one.decimals === decimals);
  if (range === undefined) return 0;
  const { percent, counts } = range.accuracy;
  return Math.abs(display.value) * (percent / 100) + counts * range.resolution;
}
