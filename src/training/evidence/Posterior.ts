import type { Suspect } from './Suspect.ts';
import type { ToolState } from './toolStates.ts';

/** What the evidence leaves of every suspect and of every state of the tools. */
export class Posterior {
  constructor(
    private readonly all: readonly Suspect[],
    private readonly tools: readonly ToolState[],
    /** Chance of each suspect, in the order of the suspects; sums to 1. */
    readonly suspects: readonly number[],
    /** Chance of each state of the tools; sums to 1. */
    readonly toolStates: readonly number[],
  ) {}

  /** Chances by item; each pair of items is an entry of its own. Sums to 1. */
  byItem(): ReadonlyMap<string, number> {
    return this.sums(({ item }) => item);
  }

  /** Chances by what is wrong with which item. Sums to 1. */
  byModeGroup(): ReadonlyMap<string, number> {
    return this.sums(({ modeGroup }) => modeGroup);
  }

  /** Chance that this item is among what must be renewed; of 'nothing-wrong', that nothing is. */
  ofItem(item: string): number {
    return this.sumWhere(({ item: own, items }) => own === item || items.some((one) => one === item));
  }

  /** Chance that this is wrong with its item, as a share of the item's own chance; 0 where the item has none. */
  modeWithinItem(modeGroup: string): number {
    const item = this.all.find((suspect) => suspect.modeGroup === modeGroup)?.item;
    if (item === undefined) return 0;
    const ofItem = this.sumWhere((suspect) => suspect.item === item);
    const ofMode = this.sumWhere((suspect) => suspect.modeGroup === modeGroup);
    return ofItem > 0 ? ofMode / ofItem : 0;
  }

  /** The likeliest item and, in it, the likeliest mode group. */
  leading(): { readonly item: string; readonly chance: number; readonly modeGroup: string } {
    const [item, chance] = greatest(this.byItem());
    const modes = new Map([...this.byModeGroup()].filter(([mode]) => this.itemOfMode(mode) === item));
    return { item, chance, modeGroup: greatest(modes)[0] };
  }

  /** Chance that a tool is bad. */
  ofTool(item: string): number {
    return this.tools.reduce(
      (sum, state, t) => (state.item === item ? sum + (this.toolStates[t] ?? 0) : sum),
      0,
    );
  }

  private itemOfMode(modeGroup: string): string | undefined {
    return this.all.find((suspect) => suspect.modeGroup === modeGroup)?.item;
  }

  private sumWhere(is: (suspect: Suspect) => boolean): number {
    return this.all.reduce((sum, suspect, s) => (is(suspect) ? sum + (this.suspects[s] ?? 0) : sum), 0);
  }

  private sums(nameOf: (suspect: Suspect) => string): ReadonlyMap<string, number> {
    const sums = new Map<string, number>();
    for (const [s, suspect] of this.all.entries()) {
      const name = nameOf(suspect);
      sums.set(name, (sums.get(name) ?? 0) + (this.suspects[s] ?? 0));
    }
    return sums;
  }
}

function greatest(chances: ReadonlyMap<string, number>): readonly [string, number] {
  let best: readonly [string, number] = ['', -1];
  for (const entry of chances) if (entry[1] > best[1]) best = entry;
  return best;
}
