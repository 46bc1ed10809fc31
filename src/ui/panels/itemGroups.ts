import type { BenchSurface } from '../../sim/devices/BenchSurface.ts';
import type { VerdictItem } from '../../training/sitting/SittingAction.ts';

export type ItemGroup = 'unit' | 'harness' | 'supply' | 'hoses' | 'tools' | 'none';

export interface ItemsOfGroup {
  readonly group: ItemGroup;
  readonly items: readonly VerdictItem[];
}

/** What of it a rig has, that nothing is wrong with it. */
export function itemGroupsOf({ items: has }: BenchSurface): readonly ItemsOfGroup[] {
  return ITEM_GROUPS.map(({ group, items }) => ({
    group,
    items: items.filter((item) => item === 'nothing-wrong' || has.includes(item)),
  }));
}

/** Everything a verdict may name at any rig, under headings, in the order of the job. */
export const ITEM_GROUPS: readonly ItemsOfGroup[] = [
  { group: 'unit', items: ['unit'] },
  { group: 'harness', items: ['plug', 'feed-wire', 'ground-wire', 'sense-wire'] },
  { group: 'supply', items: ['fuse', 'key-switch', 'battery', 'controller'] },
  {
    group: 'hoses',
    items: [
      'canister-hose',
      'air-hose',
      'engine-hose',
      'filter',
      'filler-cap',
      'canister',
      'tank-seal',
      'purge-valve',
    ],
  },
  {
    group: 'tools',
    items: ['meter-leads', 'meter-fuses', 'meter-battery', 'jumper', 'plain-lead', 'hand-pump'],
  },
  { group: 'none', items: ['nothing-wrong'] },
];
