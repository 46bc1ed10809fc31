import { ITEMS, TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { ItemChances } from './Posterior.ts';
import { NOTHING_WRONG } from './suspects.ts';

/** Items of the truck in the catalogue's order, and that nothing is wrong. */
export const TRUCK_ITEMS: readonly VerdictItem[] = [
  ...ITEMS.filter((item) => !TOOL_ITEMS.includes(item)),
  NOTHING_WRONG,
];

/** Those of them that a rig has. */
export function truckItemsOf({ surface }: RigDefinition): readonly VerdictItem[] {
  return TRUCK_ITEMS.filter((item) => item === NOTHING_WRONG || surface.items.includes(item));
}

export function isToolItem(item: VerdictItem): boolean {
  return item !== NOTHING_WRONG && TOOL_ITEMS.includes(item);
}

/** Chance that an item is wrong: a part of the truck alone or with another, a tool beside the truck. */
export function chanceOf(chances: ItemChances, item: VerdictItem): number {
  return isToolItem(item) ? chances.ofTool(item) : chances.ofItem(item);
}
