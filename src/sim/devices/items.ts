/** Replaceable items: what a verdict names and a repair renews. */
export const ITEMS = [
  'unit',
  'feed-wire',
  'ground-wire',
  'sense-wire',
  'plug',
  'fuse',
  'key-switch',
  'battery',
  'controller',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'filter',
  'filler-cap',
  'canister',
  'tank-seal',
  'purge-valve',
  'hand-pump',
  'meter-leads',
  'meter-fuses',
  'meter-battery',
  'jumper',
  'plain-lead',
] as const;
export type ItemId = (typeof ITEMS)[number];

/** Items that belong to the bench's tools, not to the truck. Renewing one is never a repair of the complaint. */
export const TOOL_ITEMS: readonly ItemId[] = [
  'hand-pump',
  'meter-leads',
  'meter-fuses',
  'meter-battery',
  'jumper',
  'plain-lead',
];
