import { err, ok } from '../../../base/Result.ts';
import { type Cavity, cavityBack, LEAD_ENDS } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Slides a back-probe pin along the wire, under the seal, to the terminal. */
export function insertPin({ bench }: ApplyContext, cavity: Cavity): Applied {
  if (bench.pins[cavity - 1]) return err('pin-already-in');
  bench.pins[cavity - 1] = true;
  return ok(undefined);
}

/** Takes a pin out again; leads on it must be lifted first. */
export function removePin({ bench }: ApplyContext, cavity: Cavity): Applied {
  if (!bench.pins[cavity - 1]) return err('pin-not-in');
  if (LEAD_ENDS.some((end) => bench.leads[end] === cavityBack(cavity))) return err('pin-has-lead');
  bench.pins[cavity - 1] = false;
  return ok(undefined);
}
