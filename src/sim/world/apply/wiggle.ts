import { err } from '../../../base/Result.ts';
import type { WigglePlace } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Moves a stretch of the harness for a second. */
export function wiggle(_context: ApplyContext, _at: WigglePlace): Applied {
  return err('cannot-be-reached');
}
