import { err } from '../../../base/Result.ts';
import type { WhichUnit } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Puts the other unit in the unit's place. */
export function swapUnit(_context: ApplyContext, _to: WhichUnit): Applied {
  return err('cannot-be-reached');
}
