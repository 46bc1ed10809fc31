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

type Towards = 'for' | 'against';

/** Another entry that changes the odds by less than this is not worth citing. */
const LEAST_CHANGE = 1.05;
const MOST_PASSES = 3;

/** A learner's log, weighed entry by entry. */
export class Citations {
  /** Likelihood of each entry under each suspect, 1 for the best. */
  private readonly byEntry: ReadonlyMap<number, readonly number[]>;

  constructor(private readonly beliefs: Beliefs) {
    this.byEntry = new Map([...beliefs.byEntry()].map(([entry, logs]) => [entry, logs.map(exp)]));
  }

  /** One entry after the other, each time the one that tells most beside those chosen, eight at most; then exchanged. */
  best(item: VerdictItem, towards: Towards): Citation {
    let chosen: Citation = { cites: [], chance: this.chanceOf(item, this.beliefs.prior, null) };
    while (chosen.cites.length < MAX_CITATIONS) {
      const next = this.beside(chosen.cites, item, towards);
      if (next === null || !isChange(chosen.chance, next.chance, towards)) break;
      chosen = next;
    }
    const { cites, chance } = this.exchanged(chosen, item, towards);
    return { cites: [...cites].sort((a, b) => a - b), chance };
  }

  /** Puts a better entry in the place of each, as long as there is one. */
  private exchanged(from: Citation, item: VerdictItem, towards: Towards): Citation {
    let chosen = from;
    for (let pass = 0; pass < MOST_PASSES; pass++) {
      const before = chosen.chance;
      for (const old of chosen.cites) {
        const kept = chosen.cites.filter((entry) => entry !== old);
        const next = this.beside(kept, item, towards);
        if (next !== null && isChange(chosen.chance, next.chance, towards)) chosen = next;
      }
      if (chosen.chance === before) break;
    }
    return chosen;
  }

  /** The entry that tells most beside others, with them. */
  private beside(kept: readonly number[], item: VerdictItem, towards: Towards): Citation | null {
    let weights = [...this.beliefs.prior];
    for (const entry of kept) {
      const own = this.byEntry.get(entry) ?? [];
      weights = normalised(weights.map((weight, s) => weight * (own[s] ?? 0)));
    }
    let best: Citation | null = null;
    for (const [entry, own] of this.byEntry) {
      if (kept.includes(entry)) continue;
      const chance = this.chanceOf(item, weights, own);
      const better = best === null || (towards === 'for' ? chance > best.chance : chance < best.chance);
      if (better) best = { cites: [...kept, entry], chance };
    }
    return best;
  }

  private chanceOf(item: VerdictItem, weights: readonly number[], own: readonly number[] | null): number {
    let all = 0;
    let ofItem = 0;
    for (const [s, suspect] of this.beliefs.tables.suspects.entries()) {
      const weight = (weights[s] ?? 0) * (own?.[s] ?? 1);
      all += weight;
      if (suspect.item === item || suspect.items.some((one) => one === item)) ofItem += weight;
    }
    return all > 0 ? ofItem / all : 0;
  }
}

function isChange(before: number, after: number, towards: Towards): boolean {
  const odds = (p: number): number => Math.max(p, 1e-12) / Math.max(1 - p, 1e-12);
  const ratio = odds(after) / odds(before);
  return towards === 'for' ? ratio > LEAST_CHANGE : ratio < 1 / LEAST_CHANGE;
}
