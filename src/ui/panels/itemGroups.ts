import type { VerdictItem } from '../../training/sitting/SittingAction.ts';

export type ItemGroup = 'unit' | 'harness' | 'supply' | 'hoses' | 'tools' | 'none';

/** Everything a verdict may name, under headings, in the order of the job. */
export const ITEM_GROUPS: readonly { readonly group: ItemGroup; readonly items: readonly VerdictItem[] }[] = [
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
