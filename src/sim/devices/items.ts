/** Replaceable items: what a verdict names and a repair renews. */
export const ITEMS = [
  'unit',
  'feed-wire',
  'ground-wire',
  'sense-wire',
  'fuse',
  'key-switch',
  'battery',
  'controller',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'hand-pump',
  'meter-leads',
] as const;
export type ItemId = (typeof ITEMS)[number];

/** Items that belong to the bench's tools, not to the truck. Renewing one is never a repair of the complaint. */
export const TOOL_ITEMS: readonly ItemId[] = ['hand-pump', 'meter-leads'];
