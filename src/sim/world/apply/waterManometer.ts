import { err } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Sets the needle bleed of the 1 L jar, 0 shut to 1 open. */
export function setBleed(_context: ApplyContext, _openness: number): Applied {
  return err('cannot-be-reached');
}

/** Fills the manometer to its zero again. */
export function refillManometer(_context: ApplyContext): Applied {
  return err('cannot-be-reached');
}
