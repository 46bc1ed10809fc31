import { err, ok } from '../../../base/Result.ts';
import { UNIT_PORTS, type WhichUnit } from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { layBareUnit } from './bareUnit.ts';

/** Puts the other unit in the unit's place. Each unit keeps its own faults, damage and cracked barbs. */
export function swapUnit({ bench, rebuild }: ApplyContext, to: WhichUnit): Applied {
  if (bench.unit === to) return err('already-so');
  if (bench.plugMated) return err('plug-must-be-parted');
  if (UNIT_PORTS.some((port) => bench.sites[port] !== null)) return err('barbs-must-be-bare');
  layBareUnit(bench);
  const cracked = bench.cracked;
  bench.cracked = bench.crackedOfOther;
  bench.crackedOfOther = cracked;
  bench.unit = to;
  rebuild();
  return ok(undefined);
}
