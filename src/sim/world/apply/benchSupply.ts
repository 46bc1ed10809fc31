import { err } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Switches the bench's 12 V supply. */
export function switchSupply(_context: ApplyContext, _on: boolean): Applied {
  return err('cannot-be-reached');
}
