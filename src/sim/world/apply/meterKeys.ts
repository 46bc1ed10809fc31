import { err, ok } from '../../../base/Result.ts';
import { rangesOf } from '../../devices/meter/ranges.ts';
import type { ExtremesMode, MeterJack } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Puts the red lead's plug into a jack of the meter, on or off. */
export function meterJack({ bench }: ApplyContext, jack: MeterJack): Applied {
  if (bench.meterJack === jack) return err('already-so');
  bench.meterJack = jack;
  return ok(undefined);
}

/** Holds a range by its number, or lets the meter choose again. */
export function meterRange({ bench }: ApplyContext, range: number | null): Applied {
  if (bench.meterFunction === 'off') return err('meter-is-off');
  if (bench.meterRange === range) return err('already-so');
  if (range !== null && rangesOf(bench.meterFunction)[range] === undefined) return err('range-not-there');
  bench.meterRange = range;
  return ok(undefined);
}

/** Freezes the display and the tone, or lets them go on. */
export function meterHold({ bench }: ApplyContext, on: boolean): Applied {
  if (bench.meterFunction === 'off') return err('meter-is-off');
  if (bench.meterHold === on) return err('already-so');
  bench.meterHold = on;
  return ok(undefined);
}

/** Records the lowest and highest reading from now on, and says which is shown; 'off' forgets them. */
export function meterExtremes({ bench }: ApplyContext, show: ExtremesMode): Applied {
  if (bench.meterFunction === 'off') return err('meter-is-off');
  if (bench.meterExtremes === show) return err('already-so');
  bench.meterExtremes = show;
  return ok(undefined);
}

/** Takes the present reading as zero, or shows readings as they are again. */
export function meterRelative({ bench, meterReading }: ApplyContext, on: boolean): Applied {
  if (bench.meterFunction === 'off') return err('meter-is-off');
  if (bench.meterRelative === on) return err('already-so');
  if (on && meterReading() === null) return err('no-number-to-zero');
  bench.meterRelative = on;
  return ok(undefined);
}
