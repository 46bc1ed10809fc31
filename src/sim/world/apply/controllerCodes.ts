import { err } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Clears the controller's pending and stored codes through the reader. */
export function clearCodes(_context: ApplyContext): Applied {
  return err('cannot-be-reached');
}

/** Takes the truck out for drive cycles. */
export function roadTest(_context: ApplyContext, _cycles: number): Applied {
  return err('cannot-be-reached');
}
