/** Where on the benches air is, by node name. A rig has some of them. */
export const AIR_VOLUMES = [
  'canister',
  'air',
  'engine',
  'drive',
  'pump',
  'delay',
  'can',
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
export type AirVolume = (typeof AIR_VOLUMES)[number];

/** Nodes of the volumes that the rig has. */
export type AirNodes = Readonly<Record<AirVolume, number>>;

/** Hoses and vessels of the shop's own tools, at every rig. */
export const TOOL_VOLUMES = [
  'pump-hose',
  'jar-hose',
  'jar',
  'manometer',
  'smoke-hose',
] as const satisfies readonly AirVolume[];
