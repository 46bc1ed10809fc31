import type { VerdictItem } from '../../training/sitting/SittingAction.ts';

export type ItemGroup = 'unit' | 'harness' | 'supply' | 'hoses' | 'tools' | 'none';

/** Everything a verdict may name, under headings, in the order of the circuit. */
export const ITEM_GROUPS: readonly { readonly group: ItemGroup; readonly items: readonly VerdictItem[] }[] = [
  { group: 'unit', items: ['unit'] },
  { group: 'harness', items: ['feed-wire', 'ground-wire', 'sense-wire'] },
  { group: 'supply', items: ['fuse', 'key-switch', 'battery', 'controller'] },
  { group: 'hoses', items: ['canister-hose', 'air-hose', 'engine-hose'] },
  { group: 'tools', items: ['hand-pump', 'meter-leads'] },
  { group: 'none', items: ['nothing-wrong'] },
];
