import type { Tick } from '../../base/ticks.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { BoardMark, VerdictItem } from '../sitting/SittingAction.ts';

/** What the evidence leaves of one item, 0 to 1: that it must be renewed, alone or with another. */
export interface ItemChance {
  readonly item: VerdictItem;
  readonly chance: number;
}

/**
 * What everything shown had left by a moment: after the complaint (`entry` 0), then after each log entry up to the verdict.
 * Every item of the truck and `nothing-wrong` are named, in the catalogue's order; `tools` are the chances that a tool is bad.
 */
export interface EvidenceStep {
  readonly entry: number;
  readonly tick: Tick;
  readonly items: readonly ItemChance[];
  readonly tools: readonly ItemChance[];
}

/** How far the evidence carries the verdict. */
export interface VerdictEvidence {
  readonly named: VerdictItem;
  readonly mode: string | null;
  /** The items that no available test tells from the named one, itself first. Chances below are the group's. */
  readonly group: readonly VerdictItem[];
  /** After the complaint, on the cited entries alone, and on everything shown. */
  readonly prior: number;
  readonly cited: number;
  readonly shown: number;
  /** Whether the named item's group is the likeliest on the lower of the two. */
  readonly leads: boolean;
  /** The share of the way from the complaint to a proof, 0 to 1: `e` of the score. */
  readonly weight: number;
}

/**
 * What a board mark's evidence carried when it was made.
 * carried: the cited entries carry it, and everything shown does not speak against it. too-early: nothing shown until then
 * carried it. wrong-test: what had been shown carried it, but not the entries that were cited.
 */
export type MarkJudgement = 'carried' | 'too-early' | 'wrong-test';

export interface MarkEvidence {
  readonly item: VerdictItem;
  readonly mark: Exclude<BoardMark, 'open'>;
  readonly tick: Tick;
  readonly cites: readonly number[];
  /** Chances of the item after the complaint, on the cited entries, and on everything shown until the mark. */
  readonly prior: number;
  readonly cited: number;
  readonly shown: number;
  readonly judgement: MarkJudgement;
}

/** What a closed sitting's evidence was worth. It knows nothing of what is really wrong. Plain JSON. */
export interface EvidenceFacts {
  readonly steps: readonly EvidenceStep[];
  readonly verdict: VerdictEvidence;
  /** Marks as they stood at the verdict, in the order of their first marking. */
  readonly marks: readonly MarkEvidence[];
  /** The test that would have settled most when the verdict was given; null where nothing was left to settle. */
  readonly settling: {
    readonly test: StandardTestId;
    readonly bits: number;
    readonly minutes: number;
  } | null;
}
