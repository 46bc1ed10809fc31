import { err, ok } from '../../../base/Result.ts';
import type { WigglePlace } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Takes hold of a stretch of the harness and moves it for a second; the world sets when the hand lets go. */
export function wiggle({ bench }: ApplyContext, at: WigglePlace): Applied {
  if (bench.wiggle !== null) return err('already-so');
  bench.wiggle = { at, until: 0 };
  return ok(undefined);
}
