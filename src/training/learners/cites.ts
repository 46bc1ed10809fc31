import { exp } from '../../base/maths.ts';
import { normalised } from '../evidence/information.ts';
import { MAX_CITATIONS } from '../sitting/mayAct.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { Beliefs } from './Beliefs.ts';

/** Which log entries to cite: those that together speak clearest for an item, or clearest against it. */
export interface Citation {
  readonly cites: readonly number[];
  /** Chance of the item on these entries alone, as the learner sees it. */
  readonly chance: number;
}

/** Another entry that changes the odds by less than this is not worth citing. */
const LEAST_CHANGE = 1.05;

/** A learner's log, weighed entry by entry. */
export class Citations {
  /** Likelihood of each entry under each suspect, 1 for the best. */
  private readonly byEntry: ReadonlyMap<number, readonly number[]>;

  constructor(private readonly beliefs: Beliefs) {
    this.byEntry = new Map([...beliefs.byEntry()].map(([entry, logs]) => [entry, logs.map(exp)]));
  }

  /** One entry after the other, each time the one that tells most beside those chosen; eight at most. */
  best(item: VerdictItem, towards: 'for' | 'against'): Citation {
    const cites: number[] = [];
    let weights = [...this.beliefs.prior];
    let chance = this.chanceOf(item, weights);
    while (cites.length < MAX_CITATIONS) {
      const next = this.next(item, towards, weights, cites);
      if (next === null || !isChange(chance, next.chance, towards)) break;
      cites.push(next.entry);
      weights = normalised(next.weights);
      chance = next.chance;
    }
    return { cites: cites.sort((a, b) => a - b), chance };
  }

  private next(
    item: VerdictItem,
    towards: 'for' | 'against',
    weights: readonly number[],
    cited: readonly number[],
  ) {
    let best: { readonly entry: number; readonly weights: number[]; readonly chance: number } | null = null;
    for (const [entry, own] of this.byEntry) {
      if (cited.includes(entry)) continue;
      const together = weights.map((weight, s) => weight * (own[s] ?? 0));
      const chance = this.chanceOf(item, together);
      const better = best === null || (towards === 'for' ? chance > best.chance : chance < best.chance);
      if (better) best = { entry, weights: together, chance };
    }
    return best;
  }

  private chanceOf(item: VerdictItem, weights: readonly number[]): number {
    let all = 0;
    let own = 0;
    for (const [s, suspect] of this.beliefs.tables.suspects.entries()) {
      const weight = weights[s] ?? 0;
      all += weight;
      if (suspect.item === item || suspect.items.some((one) => one === item)) own += weight;
    }
    return all > 0 ? own / all : 0;
  }
}

function isChange(before: number, after: number, towards: 'for' | 'against'): boolean {
  const odds = (p: number): number => Math.max(p, 1e-12) / Math.max(1 - p, 1e-12);
  const ratio = odds(after) / odds(before);
  return towards === 'for' ? ratio > LEAST_CHANGE : ratio < 1 / LEAST_CHANGE;
}
