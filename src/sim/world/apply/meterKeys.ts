import { err } from '../../../base/Result.ts';
import type { ExtremesMode, MeterJack } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Puts the red lead's plug into a jack of the meter. */
export function meterJack(_context: ApplyContext, _jack: MeterJack): Applied {
  return err('cannot-be-reached');
}

/** Holds a range by its number, or lets the meter choose again. */
export function meterRange(_context: ApplyContext, _range: number | null): Applied {
  return err('cannot-be-reached');
}

/** Freezes the display, or lets it go on. */
export function meterHold(_context: ApplyContext, _on: boolean): Applied {
  return err('cannot-be-reached');
}

/** Records the lowest and highest reading from now on. */
export function meterExtremes(_context: ApplyContext, _show: ExtremesMode): Applied {
  return err('cannot-be-reached');
}

/** Takes the present reading as zero. */
export function meterRelative(_context: ApplyContext, _on: boolean): Applied {
  return err('cannot-be-reached');
}
