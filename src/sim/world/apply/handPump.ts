import { clamp } from '../../../base/maths.ts';
import { err, ok } from '../../../base/Result.ts';
import { handleTable } from '../../devices/modes/handle.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { hissAt } from './hiss.ts';

/** The hand moves the handle towards a travel; it follows at the speed of a hand. */
export function moveHandle({ bench }: ApplyContext, position: number): Applied {
  const target = clamp(position, 0, 1);
  const { mode } = bench.handle;
  const follows = mode === 'still' || mode === 'following';
  if (follows && bench.handle.target === target) return err('already-so');
  bench.handle.target = target;
  bench.handle.mode = handleTable.next(bench.handle.mode, 'FOLLOW');
  return ok(undefined);
}

/** One whole stroke: out to `depth`, then back in. */
export function stroke({ bench }: ApplyContext, depth: number): Applied {
  if (bench.handle.mode === 'drawing' || bench.handle.mode === 'returning') return err('pump-still-moving');
  bench.handle.target = clamp(depth, 0, 1);
  bench.handle.mode = handleTable.next(bench.handle.mode, 'STROKE');
  return ok(undefined);
}

/** Opens or shuts the release at the gauge tee. */
export function release(context: ApplyContext, open: boolean): Applied {
  const { bench } = context;
  if (bench.releaseOpen === open) return err('already-so');
  if (open) hissAt(context, 'pump-hose-end', 'pump');
  bench.releaseOpen = open;
  return ok(undefined);
}
