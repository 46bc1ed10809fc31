import type { VerdictItem } from '../sitting/SittingAction.ts';

/** Items that carry the solenoid's current: to name one of them asks for feed and ground under load. */
export const SUPPLY_ITEMS: ReadonlySet<VerdictItem> = new Set([
  'feed-wire',
  'ground-wire',
  'plug',
  'fuse',
  'key-switch',
  'battery',
  'controller',
]);
