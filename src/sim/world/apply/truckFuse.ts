import { err, ok } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** Pulls the truck's blade fuse out of its holder, where its element can be seen. */
export function pullFuse({ bench }: ApplyContext): Applied {
  if (!bench.fuseFitted) return err('fuse-already-out');
  bench.fuseFitted = false;
  return ok(undefined);
}

/** Puts the same fuse back. */
export function fitFuse({ bench }: ApplyContext): Applied {
  if (bench.fuseFitted) return err('fuse-already-in');
  bench.fuseFitted = true;
  return ok(undefined);
}
