import type { ItemId } from '../devices/items.ts';

/** Where on the bench air is, by node name. The unit's own chambers are renewed with the unit. */
export const UNIT_VOLUMES = ['canister', 'air', 'engine', 'drive', 'pump', 'delay'] as const;
export const OTHER_VOLUMES = [
  'canister-hose',
  'air-hose',
  'engine-hose',
  'canister-vessel',
  'tank',
  'reservoir',
  'pump-hose',
  'jar-hose',
  'jar',
  'manometer',
  'smoke-hose',
] as const;
export type AirVolume = (typeof UNIT_VOLUMES)[number] | (typeof OTHER_VOLUMES)[number];
export const AIR_VOLUMES: readonly AirVolume[] = [...UNIT_VOLUMES, ...OTHER_VOLUMES];

export type AirNodes = Readonly<Record<AirVolume, number>>;

/** Which volumes come with an item, or stand open to the room while it is fitted. */
export const VOLUMES_OF_ITEM: Readonly<Partial<Record<ItemId, readonly AirVolume[]>>> = {
  unit: UNIT_VOLUMES,
  'canister-hose': ['canister-hose'],
  'air-hose': ['air-hose'],
  'engine-hose': ['engine-hose'],
  filter: ['air-hose'],
  canister: ['canister-vessel'],
  'filler-cap': ['tank'],
  'tank-seal': ['tank'],
  'purge-valve': ['canister-vessel'],
  'hand-pump': ['pump-hose'],
};
