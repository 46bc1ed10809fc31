import { clamp, ln } from '../../base/maths.ts';
import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { isToolItem, TRUCK_ITEMS } from './chanceOf.ts';
import type { VerdictEvidence } from './EvidenceFacts.ts';
import type { ItemChances } from './Posterior.ts';

/** What there was to go by: after the complaint, on the cited entries alone (null where none were cited), on everything shown. */
export interface ChancesAtVerdict {
  readonly prior: ItemChances;
  readonly cited: ItemChances | null;
  readonly shown: ItemChances;
}

/** Where the way to a proof begins at the earliest, where it ends, and how long it is at least: log-odds 1.5. */
const LEAST_BEGIN = 0.05;
const PROOF = 0.95;
const LEAST_WAY = 1.5;
const FARTHEST_PROOF = 0.995;
/** Keeps log-odds finite. */
const ALL_BUT = 1e-12;

/**
 * How far the evidence carries a verdict: by the lower of what the cited entries and what everything shown leave of the
 * named item's group, so that citing only what agrees earns nothing. `groupOf` gives the items that no test tells apart.
 */
export function verdictEvidence(
  named: VerdictItem,
  mode: string | null,
  { prior, cited, shown }: ChancesAtVerdict,
  groupOf: (item: string) => readonly string[],
): VerdictEvidence {
  const group = isToolItem(named) ? [named] : (groupOf(named) as readonly VerdictItem[]);
  const onCited = cited ?? prior;
  const before = chanceOfGroup(prior, group);
  const byCited = chanceOfGroup(onCited, group);
  const byShown = chanceOfGroup(shown, group);
  const lower = byCited <= byShown ? onCited : shown;
  const leads = isLeading(lower, group);
  return {
    named,
    mode,
    group,
    prior: before,
    cited: byCited,
    shown: byShown,
    leads,
    weight: leads ? wayToProof(before, Math.min(byCited, byShown)) : 0,
  };
}

/**
 * The share of the way from the complaint to a proof, in log-odds L(p) = ln(p/(1 − p)): (L(p) − a)/(b − a) from 0 to 1, with
 * a = L(max(p₀, 0.05)) and b = min(max(L(0.95), a + 1.5), L(0.995)).
 */
export function wayToProof(prior: number, chance: number): number {
  const begin = logOdds(Math.max(prior, LEAST_BEGIN));
  const end = Math.min(Math.max(logOdds(PROOF), begin + LEAST_WAY), logOdds(FARTHEST_PROOF));
  // Where the complaint alone is a proof already, there is no way to go.
  if (end <= begin) return chance >= prior ? 1 : 0;
  return clamp((logOdds(chance) - begin) / (end - begin), 0, 1);
}

export function logOdds(chance: number): number {
  const p = clamp(chance, ALL_BUT, 1 - ALL_BUT);
  return ln(p / (1 - p));
}

function chanceOfGroup(chances: ItemChances, group: readonly VerdictItem[]): number {
  const [first] = group;
  return first !== undefined && isToolItem(first) ? chances.ofTool(first) : chances.ofAny(group);
}

/**
 * Whether no other item is likelier to be wrong instead. Of two that are wrong together neither stands in the other's way. A
 * tool leads where it is likelier bad than good.
 */
function isLeading(chances: ItemChances, group: readonly VerdictItem[]): boolean {
  const own = chanceOfGroup(chances, group);
  const [first] = group;
  if (first !== undefined && isToolItem(first)) {
    return own >= 0.5 && TOOL_ITEMS.every((tool) => chances.ofTool(tool) <= own);
  }
  return TRUCK_ITEMS.every((item) => chances.ofAny([item], group) <= own);
}
