import { err } from '../../../base/Result.ts';
import type { Cavity, ExaminedPlace } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Goes to a place with the eyes. */
export function look(_context: ApplyContext, _at: ExaminedPlace): Applied {
  return err('cannot-be-reached');
}

/** Goes to a place with the ears. */
export function listen(_context: ApplyContext, _at: ExaminedPlace): Applied {
  return err('cannot-be-reached');
}

/** Feels a terminal of the parted harness half with the pin-drag gauge. */
export function dragTest(_context: ApplyContext, _cavity: Cavity): Applied {
  return err('cannot-be-reached');
}
