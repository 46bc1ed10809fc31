import { clamp } from '../../../base/maths.ts';
import { err, ok } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Sets the needle bleed of the 1 L jar, 0 shut to 1 open. */
export function setBleed({ bench }: ApplyContext, openness: number): Applied {
  const bleed = clamp(openness, 0, 1);
  if (bench.bleed === bleed) return err('already-so');
  bench.bleed = bleed;
  return ok(undefined);
}

/** Fills the manometer to its zero again. */
export function refillManometer({ bench }: ApplyContext): Applied {
  if (!bench.waterLost) return err('water-is-there');
  bench.waterLost = false;
  return ok(undefined);
}
