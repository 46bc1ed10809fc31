import type { EvidenceStep } from '../../../training/evidence/EvidenceFacts.ts';
import type { VerdictItem } from '../../../training/sitting/SittingAction.ts';

/** One layer of the stacked chart over all steps; `item` null is all others together. */
export interface Band {
  readonly item: VerdictItem | null;
  /** Chance at each step, 0 to 1. */
  readonly chances: readonly number[];
  /** Height at each step as a share of all, 0 to 1: two items may be needed at once, so chances can add up to more than 1. */
  readonly shares: readonly number[];
}

/** Items by name in the chart, at most. */
export const MOST_NAMED = 6;
/** Never this likely at any step: not worth a layer. */
const WORTH_A_NAME = 0.05;

/**
 * The likeliest few items by name, the rest as one. Those in `always` are named whatever their chances; the layers stand
 * by their chance at the last step, likeliest first, the rest last.
 */
export function chanceBands(steps: readonly EvidenceStep[], always: readonly VerdictItem[]): readonly Band[] {
  const items = steps[0]?.items.map(({ item }) => item) ?? [];
  const chancesOf = (item: VerdictItem): readonly number[] =>
    steps.map((step) => step.items.find((each) => each.item === item)?.chance ?? 0);
  const all = items.map((item) => ({ item, chances: chancesOf(item) }));
  const peak = ({ chances }: { readonly chances: readonly number[] }): number => Math.max(...chances);
  const named = all
    .filter((each) => always.includes(each.item) || peak(each) >= WORTH_A_NAME)
    .sort((a, b) => Number(always.includes(b.item)) - Number(always.includes(a.item)) || peak(b) - peak(a))
    .slice(0, Math.max(MOST_NAMED, always.length))
    .sort((a, b) => (b.chances.at(-1) ?? 0) - (a.chances.at(-1) ?? 0));
  const rest = all.filter((each) => !named.includes(each));
  const sumAt = (list: typeof all, step: number): number =>
    list.reduce((sum, { chances }) => sum + (chances[step] ?? 0), 0);
  const whole = steps.map((_, step) => sumAt(all, step));
  const share = (chances: readonly number[]): readonly number[] =>
    chances.map((chance, step) => chance / (whole[step] || 1));
  const others = steps.map((_, step) => sumAt(rest, step));
  return [...named, { item: null, chances: others.map((sum) => Math.min(1, sum)) }].map((band) => ({
    ...band,
    shares: share(band.item === null ? others : band.chances),
  }));
}

/** True where two items may be needed at once, so that heights are not the chances themselves. */
export function exceedsOne(steps: readonly EvidenceStep[]): boolean {
  return steps.some(({ items }) => items.reduce((sum, { chance }) => sum + chance, 0) > 1.02);
}

/** The step that stood at a moment: the last one not after it. */
export function stepAt(steps: readonly EvidenceStep[], tick: number): number {
  let at = 0;
  for (const [index, step] of steps.entries()) if (step.tick <= tick) at = index;
  return at;
}
