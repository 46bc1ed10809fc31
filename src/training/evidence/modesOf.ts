import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';

/** What may be wrong with an item, in the catalogue's order, each once; damage that only a hand makes is left out. */
export function modesOf(item: VerdictItem, rig?: RigId): readonly string[] {
  const modes = rigNamed(rig)
    .faults.filter((fault) => fault.item === item && fault.weight > 0)
    .map(({ mode }) => mode);
  return [...new Set(modes)];
}
