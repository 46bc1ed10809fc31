import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import { modesOf } from '../../training/evidence/modesOf.ts';
import type { SittingAction, VerdictItem } from '../../training/sitting/SittingAction.ts';
import type { MarkedItem } from '../../training/sitting/SittingView.ts';
import { inLogOrder, toggledCite } from './cites.ts';

/** A verdict while it is thought over. */
export interface VerdictDraft {
  readonly item: VerdictItem | null;
  /** What is said to be wrong with the item: not asked yet, or answered; null is 'I cannot say'. */
  readonly answer: { readonly mode: string | null } | null;
  readonly cites: readonly number[];
  /** The learner has ticked entries here: from then on no choice of an item changes them. */
  readonly citedByHand: boolean;
}

/** Begins with what was convicted last on the board, and its entries. A convicted tool is no answer to the complaint. */
export function beginVerdict(marks: readonly MarkedItem[]): VerdictDraft {
  const convicted = marks.filter(({ item, mark }) => mark === 'convicted' && !isTool(item));
  const last = convicted.reduce<MarkedItem | null>(
    (latest, each) => (latest === null || each.tick >= latest.tick ? each : latest),
    null,
  );
  return {
    item: last?.item ?? null,
    answer: null,
    cites: last?.cites ?? [],
    citedByHand: false,
  };
}

/** Another item is named: what is wrong is asked anew, and the entries are those it was convicted by. */
export function withItem(draft: VerdictDraft, item: VerdictItem, marks: readonly MarkedItem[]): VerdictDraft {
  const standing = marks.find((each) => each.item === item && each.mark === 'convicted');
  return {
    ...draft,
    item,
    answer: draft.item === item ? draft.answer : null,
    cites: draft.citedByHand ? draft.cites : (standing?.cites ?? []),
  };
}

export function withCite(draft: VerdictDraft, id: number): VerdictDraft {
  return { ...draft, cites: toggledCite(draft.cites, id), citedByHand: true };
}

/** The item and its entries are those of a conviction on the board. */
export function isFromBoard({ item, cites, citedByHand }: VerdictDraft): boolean {
  return item !== null && !citedByHand && cites.length > 0;
}

/** Whether an item is asked what is wrong with it. */
export function asksMode(item: VerdictItem): boolean {
  return modesOf(item).length > 0;
}

/** The action that gives it; null while something is not chosen. */
export function verdictAction({
  item,
  answer,
  cites,
}: VerdictDraft): Extract<SittingAction, { readonly kind: 'give-verdict' }> | null {
  if (item === null || (answer === null && asksMode(item))) return null;
  return { kind: 'give-verdict', item, mode: answer?.mode ?? null, cites: inLogOrder(cites) };
}

function isTool(item: VerdictItem): boolean {
  return TOOL_ITEMS.some((tool) => tool === item);
}
