import type { Tick } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { EvidenceFacts, MarkEvidence } from '../evidence/EvidenceFacts.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import type { CoachDepth, SittingAction, VerdictItem } from '../sitting/SittingAction.ts';
import type { RuleId, SafetyId } from './ruleIds.ts';

/** One method rule as it went. `occasion` is when it was triggered, `entries` the log entries that show it kept. */
export interface RuleOutcome {
  readonly rule: RuleId;
  readonly outcome: 'kept' | 'missed' | 'no-occasion';
  readonly entries: readonly number[];
  /** Ticks of the actions that kept it, or that broke it. */
  readonly ticks: readonly Tick[];
  /** Of a duty that was done, but fewer times than it asks: when, and how often it asks. */
  readonly tooFew?: { readonly ticks: readonly Tick[]; readonly of: number };
}

export interface SafetyBreach {
  readonly breach: SafetyId;
  readonly grade: 'minor' | 'serious';
  readonly tick: Tick;
}

export interface ScorePart {
  readonly part: 'verdict' | 'evidence' | 'method' | 'economy' | 'repair';
  readonly points: number;
  readonly of: number;
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
    /** Whether what was said to be wrong with the item is. */
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
  readonly cost: { readonly money: number; readonly bookMinutes: number };
  readonly par: JobPar;
  readonly evidence: EvidenceFacts;
  /** Board marks beside the truth. */
  readonly boardMarks: readonly (MarkEvidence & { readonly agrees: boolean; readonly points: number })[];
  readonly coachAsked: Readonly<Record<CoachDepth, number>>;
  readonly trace: readonly TraceSample[];
  readonly marks: readonly { readonly tick: Tick; readonly action: SittingAction }[];
  /** Scenario author's remark, shown after closing. */
  readonly remark: string;
}
