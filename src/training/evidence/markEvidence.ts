import type { MarkedItem } from '../sitting/SittingView.ts';
import { chanceOf } from './chanceOf.ts';
import type { MarkEvidence, MarkJudgement } from './EvidenceFacts.ts';
import type { ItemChances } from './Posterior.ts';
import type { ChancesAtVerdict } from './verdictEvidence.ts';

/** An item may be cleared once hardly any chance is left of it, and far less than the complaint left. */
const CLEARED = 0.02;
const CLEARED_OF_PRIOR = 1 / 4;
/** And convicted once there is little doubt. */
const CONVICTED = 0.9;

/** What one board mark's evidence carried, by the chances as they stood when it was made. */
export function markEvidence({ item, mark, tick, cites }: MarkedItem, at: ChancesAtVerdict): MarkEvidence {
  const of = (chances: ItemChances): number => chanceOf(chances, item);
  const prior = of(at.prior);
  const cited = of(at.cited ?? at.prior);
  const shown = of(at.shown);
  return { item, mark, tick, cites, prior, cited, shown, judgement: judgement(mark, prior, cited, shown) };
}

function judgement(mark: MarkedItem['mark'], prior: number, cited: number, shown: number): MarkJudgement {
  const carries = (chance: number): boolean =>
    mark === 'cleared' ? chance <= Math.min(CLEARED, CLEARED_OF_PRIOR * prior) : chance >= CONVICTED;
  if (!carries(shown)) return 'too-early';
  return carries(cited) ? 'carried' : 'wrong-test';
}
