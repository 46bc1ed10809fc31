import { exp } from '../../base/maths.ts';
import { normalised } from '../evidence/information.ts';
import { MAX_CITATIONS } from '../sitting/mayAct.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { Beliefs } from './Beliefs.ts';
import type { Note } from './Note.ts';
import { logsOf } from './tableEvidence.ts';

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
  private readonly carried: ReadonlyMap<number, readonly Note[]>;
  /** Likelihoods under each suspect, 1 for the best, of what an entry carries beyond others. */
  private readonly known = new Map<string, readonly number[]>();

  constructor(private readonly beliefs: Beliefs) {
    this.carried = beliefs.byEntry();
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

  /** The entry that tells most beside others, with them. What two entries carry both counts once. */
  private beside(kept: readonly number[], item: VerdictItem, towards: Towards): Citation | null {
    const cited = new Set(kept.flatMap((entry) => this.carried.get(entry) ?? []));
    const own = this.likelihoods(`kept ${kept.join()}`, [...cited]);
    const weights = normalised(this.beliefs.prior.map((p, s) => p * (own[s] ?? 0)));
    let best: Citation | null = null;
    for (const [entry, carried] of this.carried) {
      const fresh = carried.filter((note) => !cited.has(note));
      if (fresh.length === 0) continue;
      const chance = this.chanceOf(item, weights, this.likelihoods(keyOf(entry, fresh), fresh));
      const better = best === null || (towards === 'for' ? chance > best.chance : chance < best.chance);
      if (better) best = { cites: [...kept, entry], chance };
    }
    return best;
  }

  private likelihoods(key: string, notes: readonly Note[]): readonly number[] {
    let known = this.known.get(key);
    if (known === undefined) {
      known = logsOf(this.beliefs.tables, notes).map(exp);
      this.known.set(key, known);
    }
    return known;
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

function keyOf(entry: number, fresh: readonly Note[]): string {
  return `${entry} from ${fresh[0]?.shown.tick} ${fresh.length}`;
}

function isChange(before: number, after: number, towards: Towards): boolean {
  const odds = (p: number): number => Math.max(p, 1e-12) / Math.max(1 - p, 1e-12);
  const ratio = odds(after) / odds(before);
  return towards === 'for' ? ratio > LEAST_CHANGE : ratio < 1 / LEAST_CHANGE;
}
