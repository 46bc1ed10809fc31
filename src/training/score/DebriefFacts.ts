import type { Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { EvidenceFacts, MarkEvidence } from '../evidence/EvidenceFacts.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { ScorePartName } from '../scenario/weights.ts';
import type { BoardMark, CoachDepth, SittingAction, VerdictItem } from '../sitting/SittingAction.ts';
import type { RuleId, SafetyId } from './ruleIds.ts';

/** One method rule as it went. `entries` are the log entries that show it kept. */
export interface RuleOutcome {
  readonly rule: RuleId;
  readonly outcome: 'kept' | 'missed' | 'no-occasion';
  readonly entries: readonly number[];
  /** Ticks of the actions that kept it, or that broke it. */
  readonly ticks: readonly Tick[];
  /** Tests of the plan behind par that ask for it; where there are none, its occasion was in the sitting. */
  readonly calledBy: readonly StandardTestId[];
  /** The job itself asks for it, whatever the sitting and the plan. */
  readonly asked?: true;
  /** Items on which it was missed, where it goes by items. */
  readonly items?: readonly VerdictItem[];
  /** Of a duty that was done, but fewer times than it asks: when, and how often it asks. */
  readonly tooFew?: { readonly ticks: readonly Tick[]; readonly of: number };
}

export interface SafetyBreach {
  readonly breach: SafetyId;
  readonly grade: 'minor' | 'serious';
  readonly tick: Tick;
}

/** A mark of the suspect board as it counts: its weight is the item's chance after the complaint, less than nothing where uncarried. */
export interface WeighedMark {
  readonly item: VerdictItem;
  readonly mark: Exclude<BoardMark, 'open'>;
  readonly tick: Tick;
  readonly entries: readonly number[];
  readonly weight: number;
}

/**
 * Where points of a part come from, or why they did not: one line, worth `points` of `of`. Points of lines are exact and
 * add up to the part's, which are rounded to whole points. All else is codes and numbers to tell why: log `entries`, `ticks` of
 * actions, chances (`prior` after the complaint, on the `cited` entries, on everything `shown`), and `weight`, how far
 * the evidence carries the verdict, 0 to 1.
 */
export type ScoreReason = { readonly points: number; readonly of: number } & (
  | {
      /** Part verdict: the item that was named, and what was said to be wrong with it; times 0.2 + 0.8 weight. */
      readonly kind: 'right-item' | 'right-mode';
      readonly right: boolean;
      readonly weight: number;
    }
  | {
      /** Part evidence: how far the verdict is carried, whether it is right or wrong. */
      readonly kind: 'proof';
      readonly entries: readonly number[];
      readonly weight: number;
      readonly prior: number;
      readonly cited: number;
      readonly shown: number;
      readonly leads: boolean;
    }
  | {
      /** Part evidence: marks that their citations carry. `share` of the likely items' weight is carried; `fullAt` of it is full. */
      readonly kind: 'board';
      readonly carried: readonly WeighedMark[];
      readonly uncarried: readonly WeighedMark[];
      readonly share: number;
      readonly fullAt: number;
    }
  | {
      /** Part method: each rule that had an occasion or that the plan asks for. */
      readonly kind: 'rule';
      readonly rule: RuleId;
      readonly kept: boolean;
      readonly entries: readonly number[];
      readonly ticks: readonly Tick[];
    }
  | {
      /**
       * Part economy: book minutes, or dollars of parts, against par; full up to 1.5 times par, nothing at three times. `ticks` are
       * those of parts that were not needed, and of the known-good unit tried on the truck. Over the job's `limit`, where it
       * has one, nothing.
       */
      readonly kind: 'minutes' | 'money';
      readonly spent: number;
      readonly par: number;
      readonly right: boolean;
      readonly weight: number;
      readonly ticks: readonly Tick[];
      readonly limit?: number;
    }
  | {
      /** Part repair: the test on the fitted part, the truck put together, the monitor on the road; and what each lacked. */
      readonly kind: 'retest' | 'refitted' | 'monitor-pass';
      readonly entries: readonly number[];
      readonly ticks: readonly Tick[];
      readonly gaps: readonly RepairGap[];
      /** Where the vacuum test lacks: what of it was seen all the same. */
      readonly vacuum?: readonly VacuumPart[];
    }
  | {
      /** Part repair, where nothing is wrong: no part was bought. Worth as much as the verdict is carried. */
      readonly kind: 'left-alone';
      readonly weight: number;
      readonly gaps: readonly RepairGap[];
    }
);

export interface ScorePart {
  readonly part: ScorePartName;
  /** Whole points. */
  readonly points: number;
  readonly of: number;
  readonly because: readonly ScoreReason[];
}

/** A part of the vacuum test on the part as fitted: when it was seen, null where it was not, and the entries that show it. */
export interface VacuumPart {
  readonly part: 'rest' | 'closed' | 'closed-capped' | 'back';
  readonly tick: Tick | null;
  readonly entries: readonly number[];
}

/** What kept a repair from counting as proven. */
export type RepairGap =
  | 'verdict-wrong'
  | 'not-fitted'
  | 'road-failed'
  | 'vacuum-retest'
  | 'click-retest'
  | 'feed-loaded'
  | 'ground-loaded'
  | 'monitor-pass'
  | 'part-bought'
  | 'not-restored';

export interface JobCost {
  readonly money: number;
  readonly bookMinutes: number;
}

/** The truth of the sitting over time, from a replay, ten samples a second or fewer. */
export interface TraceSample {
  readonly tick: Tick;
  readonly senseVolts: number;
  readonly canisterKPa: number;
}

/** Codes and numbers only; `text` makes sentences of them. */
export interface DebriefFacts {
  readonly score: {
    readonly total: number;
    readonly parts: readonly ScorePart[];
    readonly safetyDeduction: number;
    readonly cappedAt: number | null;
  };
  readonly verdict: {
    readonly named: VerdictItem;
    readonly mode: string | null;
    readonly truth: readonly {
      readonly item: VerdictItem;
      readonly mode: string | null;
      readonly fault: string | null;
    }[];
    readonly right: boolean;
    /** Whether what was said to be wrong with the item is; of an item with one way to fail, not saying it is right too. */
    readonly modeRight: boolean;
    readonly cites: readonly number[];
  };
  readonly rules: readonly RuleOutcome[];
  /** What the repair lacked to be proven; empty when it is. */
  readonly repairGaps: readonly RepairGap[];
  readonly safety: readonly SafetyBreach[];
  readonly renewed: readonly {
    readonly item: ItemId;
    readonly needed: boolean;
    readonly money: number;
    readonly tick: Tick;
  }[];
  /** Parts and book minutes of the whole job, and of them what had been spent when the verdict was given. */
  readonly cost: JobCost & { readonly untilVerdict: JobCost };
  /** When the known-good unit was fitted on the truck before the verdict; each time counts the minutes of fitting a part. */
  readonly trialFits: readonly Tick[];
  readonly par: JobPar;
  readonly evidence: EvidenceFacts;
  /**
   * Board marks beside the truth. `agrees` is with what is wrong; `points` are by evidence alone, before the part's own
   * limits, and less than nothing for a mark that its citations do not carry.
   */
  readonly boardMarks: readonly (MarkEvidence & { readonly agrees: boolean; readonly points: number })[];
  readonly coachAsked: Readonly<Record<CoachDepth, number>>;
  readonly trace: readonly TraceSample[];
  readonly marks: readonly { readonly tick: Tick; readonly action: SittingAction }[];
  /** Scenario author's remark, shown after closing. */
  readonly remark: string;
}
