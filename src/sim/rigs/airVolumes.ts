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
