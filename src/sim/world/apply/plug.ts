import { err, ok } from '../../../base/Result.ts';
import { LEAD_ENDS, needsPartedPlug } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Parts the plug at the unit. */
export function partPlug({ bench }: ApplyContext): Applied {
  if (!bench.plugMated) return err('plug-already-parted');
  bench.plugMated = false;
  return ok(undefined);
}

/** Mates the plug until its lock clicks. A lead left on a terminal face keeps the halves apart. */
export function matePlug({ bench }: ApplyContext): Applied {
  if (bench.plugMated) return err('plug-already-mated');
  const inTheWay = LEAD_ENDS.some((end) => {
    const point = bench.leads[end];
    return point !== null && needsPartedPlug(point);
  });
  if (inTheWay) return err('plug-has-leads');
  bench.plugMated = true;
  return ok(undefined);
}
