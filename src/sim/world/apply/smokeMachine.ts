import { clamp } from '../../../base/maths.ts';
import { err, ok } from '../../../base/Result.ts';
import type { SmokeGas } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** The regulator goes this far, so that it can be overdone; four times what a fuel system bears. */
const MOST_PA = 14_000;

/** Sets the smoke machine's gas and the pressure of its regulator, pascal above the room. */
export function setSmoke({ bench }: ApplyContext, gas: SmokeGas, pa: number): Applied {
  const set = clamp(pa, 0, MOST_PA);
  if (bench.smoke.gas === gas && bench.smoke.pa === set) return err('already-so');
  bench.smoke = { gas, pa: set };
  return ok(undefined);
}
