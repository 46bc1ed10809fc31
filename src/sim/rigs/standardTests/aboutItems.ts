import type { ItemId } from '../../devices/items.ts';

/** Items that stand together behind a reading. */

/** What every volt and ohm is read with. */
export const METER = ['meter-leads', 'meter-battery'] as const satisfies readonly ItemId[];

/** All that the current of the solenoid flows through, and what sends it. */
export const SOLENOID_CIRCUIT = [
  'unit',
  'feed-wire',
  'ground-wire',
  'plug',
  'controller',
  'fuse',
  'key-switch',
  'battery',
] as const satisfies readonly ItemId[];

/** All that the sense voltage hangs on, the unit's switch with it. */
export const SENSE_CIRCUIT = [
  'unit',
  'sense-wire',
  'ground-wire',
  'plug',
  'controller',
  'battery',
] as const satisfies readonly ItemId[];

/** Hose and vessel beyond the canister port. */
export const VESSEL = [
  'canister-hose',
  'canister',
  'filler-cap',
  'tank-seal',
  'purge-valve',
] as const satisfies readonly ItemId[];
