/** Places for an eye or an ear that no other hotspot stands for. */
export const LOOKED_AT = [
  'battery',
  'unit',
  'canister-hose',
  'air-hose',
  'engine-hose',
  'filter',
  'canister',
  'filler-cap',
  'tank',
  'purge-valve',
] as const;
export type LookedAt = (typeof LOOKED_AT)[number];
