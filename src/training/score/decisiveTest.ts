import type { BenchTool, ItemId } from '../../sim/devices/items.ts';
import { areAtHand, isAtHand, type ToolsAtHand } from '../scenario/benchTools.ts';

/** Which test decides over an item. */
export type Decisive =
  | 'vacuum'
  | 'click'
  | 'click-and-feed'
  | 'click-and-ground'
  | 'vacuum-and-click'
  | 'monitor'
  | 'hold-at-closed-end'
  | 'known-source';

/** The test that decides over each item. */
const DECISIVE: Readonly<Record<ItemId, Decisive>> = {
  unit: 'vacuum',
  'sense-wire': 'vacuum',
  controller: 'vacuum-and-click',
  plug: 'vacuum-and-click',
  'canister-hose': 'monitor',
  'air-hose': 'monitor',
  'engine-hose': 'monitor',
  filter: 'monitor',
  'filler-cap': 'monitor',
  canister: 'monitor',
  'tank-seal': 'monitor',
  'purge-valve': 'monitor',
  'feed-wire': 'click-and-feed',
  'ground-wire': 'click-and-ground',
  fuse: 'click',
  'key-switch': 'click-and-feed',
  battery: 'click',
  'hand-pump': 'hold-at-closed-end',
  'meter-leads': 'known-source',
  'meter-fuses': 'known-source',
  'meter-battery': 'known-source',
  jumper: 'known-source',
  'plain-lead': 'known-source',
};

/** What must be at hand for it; the rest is done by the road. */
const DECISIVE_NEEDS: Readonly<Partial<Record<Decisive, readonly BenchTool[]>>> = {
  vacuum: ['hand-pump', 'caps-and-plugs'],
  click: ['reader'],
  'click-and-feed': ['reader', 'meter', 'back-probe-pins'],
  'click-and-ground': ['reader', 'meter', 'back-probe-pins'],
  'vacuum-and-click': ['hand-pump', 'caps-and-plugs', 'reader'],
};

/**
 * The test that decides over an item in this job. Where its tools are not at hand the controller's own monitor decides, which
 * needs nothing but a road.
 */
export function decisiveWith(tools: ToolsAtHand, item: ItemId): Decisive {
  const decisive = DECISIVE[item];
  const seesSwitch = isAtHand(tools, 'meter') || isAtHand(tools, 'reader');
  const needsSight = decisive === 'vacuum' || decisive === 'vacuum-and-click';
  const canBeDone = areAtHand(tools, DECISIVE_NEEDS[decisive] ?? []) && (seesSwitch || !needsSight);
  return canBeDone ? decisive : 'monitor';
}
