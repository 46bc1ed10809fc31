import type { SittingAction, VerdictItem } from '../../training/sitting/SittingAction.ts';
import type { MarkedItem } from '../../training/sitting/SittingView.ts';
import { inLogOrder, toggledCite } from './cites.ts';

/** A mark while it is thought over: nothing of it is done until it is confirmed. */
export interface MarkDraft {
  readonly item: VerdictItem | null;
  readonly mark: MarkedItem['mark'] | null;
  readonly cites: readonly number[];
}

/**
 * A mark begun for an item, from the mark that stands on it if there is one. `from` is the log entry it was begun at: it
 * is cited beside what the mark cites already, while there is room.
 */
export function beginMark(
  marks: readonly MarkedItem[],
  item: VerdictItem | null,
  from: number | null,
): MarkDraft {
  const standing = marks.find((each) => each.item === item);
  const cites = standing?.cites ?? [];
  return {
    item,
    mark: standing?.mark ?? null,
    cites: from === null || cites.includes(from) ? cites : toggledCite(cites, from),
  };
}

/** The action that does it; null while item or mark is not chosen. */
export function markAction({ item, mark, cites }: MarkDraft): SittingAction | null {
  if (item === null || mark === null) return null;
  return { kind: 'mark-item', item, mark, cites: inLogOrder(cites) };
}

/** The action that takes the mark of an item back. */
export function takeBackAction(item: VerdictItem): SittingAction {
  return { kind: 'mark-item', item, mark: 'open', cites: [] };
}
