import type { Tick } from '../../base/ticks.ts';
import type { SittingAction } from './SittingAction.ts';
import type { MarkedItem } from './SittingView.ts';

/** The suspect board after a mark: an item marked anew keeps its place, 'open' takes its mark back. */
export function marked(
  marks: readonly MarkedItem[],
  { item, mark, cites }: Extract<SittingAction, { readonly kind: 'mark-item' }>,
  tick: Tick,
): readonly MarkedItem[] {
  if (mark === 'open') return marks.filter((each) => each.item !== item);
  const next: MarkedItem = { item, mark, cites, tick };
  return marks.some((each) => each.item === item)
    ? marks.map((each) => (each.item === item ? next : each))
    : [...marks, next];
}
