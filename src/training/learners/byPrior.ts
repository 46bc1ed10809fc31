import type { Random } from '../../base/Random.ts';
import { truckItemsOf } from '../evidence/chanceOf.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { Beliefs } from './Beliefs.ts';

/** Items of the truck, the likeliest after the complaint first; that nothing is wrong is no part to be renewed. */
export function likeliestParts(beliefs: Beliefs): readonly Exclude<VerdictItem, 'nothing-wrong'>[] {
  const before = beliefs.posteriorOf(beliefs.prior);
  return truckItemsOf(beliefs.tables.rig)
    .flatMap((item) => (item === 'nothing-wrong' ? [] : [item]))
    .map((item) => ({ item, chance: before.ofItem(item) }))
    .sort((a, b) => b.chance - a.chance)
    .map(({ item }) => item);
}

/** The likeliest of all, that nothing is wrong among them. */
export function favourite(beliefs: Beliefs): VerdictItem {
  return beliefs.posteriorOf(beliefs.prior).leading().item as VerdictItem;
}

/** An item drawn by its chance after the complaint. */
export function drawnItem(beliefs: Beliefs, random: Random): VerdictItem {
  let left = random.next();
  for (const [s, suspect] of beliefs.tables.suspects.entries()) {
    left -= beliefs.prior[s] ?? 0;
    if (left < 0) return suspect.items[0] ?? 'nothing-wrong';
  }
  return 'nothing-wrong';
}
