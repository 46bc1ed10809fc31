import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { Beliefs } from './Beliefs.ts';
import type { Citations } from './cites.ts';

export interface Verdict {
  readonly item: VerdictItem;
  readonly mode: string | null;
  readonly cites: readonly number[];
}

/** The item that leads, what is likeliest to be wrong with it, and the entries that say so. */
export function verdictOf(beliefs: Beliefs, citations: Citations): Verdict {
  const { item } = beliefs.posterior.leading();
  const named = item as VerdictItem;
  return { item: named, mode: modeOf(beliefs, named), cites: citations.best(named, 'for').cites };
}

/** What is likeliest to be wrong with an item; null where nothing is. */
export function modeOf(beliefs: Beliefs, item: VerdictItem): string | null {
  const { posterior, tables } = beliefs;
  let best: { readonly mode: string; readonly chance: number } | null = null;
  for (const { modes } of tables.suspects) {
    for (const mode of modes) {
      if (!mode.startsWith(`${item}/`)) continue;
      const chance = posterior.ofMode(mode);
      if (best === null || chance > best.chance) best = { mode: mode.slice(item.length + 1), chance };
    }
  }
  return best?.mode ?? null;
}
