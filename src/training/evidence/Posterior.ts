import type { Suspect } from './Suspect.ts';
import type { ToolState } from './toolStates.ts';

/** What the evidence leaves of items; every `Posterior` tells it. */
export type ItemChances = Pick<Posterior, 'ofItem' | 'ofAny' | 'ofTool'>;

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
    return this.sumWhere((suspect) => isOf(suspect, item));
  }

  /** Chance that any of these items is among what must be renewed, and none of `but`. */
  ofAny(items: readonly string[], but: readonly string[] = []): number {
    return this.sumWhere(
      (suspect) => items.some((item) => isOf(suspect, item)) && !but.some((item) => isOf(suspect, item)),
    );
  }

  /** Chance that this (as `item/mode`) is wrong, as a share of its item's own chance; 0 where the item has none. */
  modeWithinItem(mode: string): number {
    const ofItem = this.ofItem(mode.split('/')[0] ?? mode);
    return ofItem > 0 ? this.ofMode(mode) / ofItem : 0;
  }

  /** Chance that this (as `item/mode`) is wrong, whatever else is. */
  ofMode(mode: string): number {
    return this.sumWhere(({ modes, modeGroup }) => modeGroup === mode || modes.includes(mode));
  }

  /** The likeliest item, alone or with another, and what is likeliest to be wrong with it. */
  leading(): { readonly item: string; readonly chance: number; readonly modeGroup: string } {
    const alone = this.all.filter(({ items }) => items.length < 2);
    const item = best(
      alone.map((suspect) => suspect.item),
      (name) => this.ofItem(name),
    );
    const modes = alone.filter((suspect) => suspect.item === item).map(({ modeGroup }) => modeGroup);
    return { item, chance: this.ofItem(item), modeGroup: best(modes, (mode) => this.ofMode(mode)) };
  }

  /** Chance that a tool is bad. */
  ofTool(item: string): number {
    return this.tools.reduce(
      (sum, state, t) => (state.item === item ? sum + (this.toolStates[t] ?? 0) : sum),
      0,
    );
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

function isOf({ item, items }: Suspect, name: string): boolean {
  return item === name || items.some((one) => one === name);
}

/** The name with the greatest chance; the first of equals. */
function best(names: readonly string[], chanceOf: (name: string) => number): string {
  const chances = new Map<string, number>();
  for (const name of names) if (!chances.has(name)) chances.set(name, chanceOf(name));
  let leading = names[0] ?? '';
  for (const [name, chance] of chances) if (chance > (chances.get(leading) ?? 0)) leading = name;
  return leading;
}
