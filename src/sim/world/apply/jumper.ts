import { err, ok } from '../../../base/Result.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { SPARK_AMPS } from './leads.ts';

/** Throws the jumper's own switch, at its supply end. Breaking a coil's current sparks inside the switch. */
export function switchJumper({ bench, ampsThrough, happen }: ApplyContext, on: boolean): Applied {
  if (bench.jumperOn === on) return err('already-so');
  if (!on && Math.abs(ampsThrough('jumper-supply')) > SPARK_AMPS) happen('spark', 'jumper');
  bench.jumperOn = on;
  return ok(undefined);
}

/** Puts a new glass fuse in the jumper. */
export function renewJumperFuse({ jumperFuseMelted, renewJumperFuse: renew }: ApplyContext): Applied {
  if (!jumperFuseMelted()) return err('already-so');
  renew();
  return ok(undefined);
}
