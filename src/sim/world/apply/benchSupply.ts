import { err, ok } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Switches the output of the bench's 12 V supply. */
export function switchSupply({ bench }: ApplyContext, on: boolean): Applied {
  if (bench.supplyOn === on) return err('already-so');
  bench.supplyOn = on;
  return ok(undefined);
}
