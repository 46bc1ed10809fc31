import { FAULTS } from '../../sim/faults/catalogue.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';

/** What may be wrong with an item, in the catalogue's order, each once; damage that only a hand makes is left out. */
export function modesOf(item: VerdictItem): readonly string[] {
  const modes = FAULTS.filter((fault) => fault.item === item && fault.weight > 0).map(({ mode }) => mode);
  return [...new Set(modes)];
}
