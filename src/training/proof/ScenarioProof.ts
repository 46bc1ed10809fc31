import type { TestTool } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Environment } from '../evidence/environment.ts';
import type { ParLine } from '../evidence/JobPar.ts';
import type { LearnerScores, ValidityFault } from '../learners/validity.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { LackingTools } from './lackingTools.ts';
import type { VariantEnd, VariantFinding } from './VariantEnd.ts';

/** What can be said of a scenario before anybody sits it: whether it is solvable, fair, and what it says it is. */
export interface ScenarioProof extends ProofPlan {
  readonly scenario: string;
  readonly codes: ProofCodes;
  /** How simulated learners fare; empty where they were not asked to sit. */
  readonly learners: readonly LearnerScores[];
  /** Where there are variants: what each truth costs, at both ends of its ranges. */
  readonly variants?: readonly VariantEnd[];
  readonly findings: readonly ProofFinding[];
  /** Whether it may be given out: no finding forbids it. */
  readonly fit: boolean;
}

/** As much of a proof as is worked out: what is not yet is null, and learners are there who have sat. */
export interface ProofSoFar {
  readonly scenario: string;
  readonly codes: ProofCodes | null;
  readonly plan: ProofPlan | null;
  readonly learners: readonly LearnerScores[];
  readonly variants?: readonly VariantEnd[];
  /** The variant at which learners sit now, counting from 1; left out while they sit the scenario as it stands. */
  readonly sitting?: number;
  readonly findings: readonly ProofFinding[];
}

export interface ProofCodes {
  readonly stated: StatedCodes;
  readonly held: StatedCodes;
}

/** How the job is solved, and what the complaint makes of it. */
export interface ProofPlan {
  /** The plan of the best next test on the scenario's own truck, tool proofs among it, in the order done. */
  readonly tests: readonly StandardTestId[];
  /** Par of the whole job, repair and road test with it: book minutes and dollars, and what they are made up of. */
  readonly minutes: number;
  readonly money: number;
  readonly lines: readonly ParLine[];
  /** Whether the plan ends in a proof, and the proof is true. */
  readonly proven: boolean;
  /** Where the tools of the job are too few: what to add. */
  readonly lacking?: LackingTools;
  /** What the plan takes into the hand. */
  readonly tools: readonly TestTool[];
  /** What is true, and what else the complaint could be taken for, the likeliest first. */
  readonly truths: readonly ItemChance[];
  readonly rivals: readonly ItemChance[];
  /** Items that no test tells from the true one, itself first. */
  readonly group: readonly VerdictItem[];
  /** Chance of the true item after the complaint, and whether nothing is likelier. */
  readonly prior: number;
  readonly favouriteIsTrue: boolean;
  readonly difficulty: Difficulty;
}

/** An item, and its chance after the complaint. */
export interface ItemChance {
  readonly item: VerdictItem;
  readonly chance: number;
}

/** Codes by what the controller holds them as; a code that is stored is not pending as well. */
export interface StatedCodes {
  readonly stored: readonly string[];
  readonly pending: readonly string[];
}

/** An estimate of how hard a job is, and what makes it so. Invented for teaching. */
export interface Difficulty {
  readonly level: 1 | 2 | 3 | 4;
  readonly because: readonly DifficultyReason[];
}

/** What makes a job harder than a look and a reading. */
export const DIFFICULTY_REASONS = [
  'many-tests',
  'favourite-is-wrong',
  'few-tests-show-it',
  'comes-and-goes',
  'tool-is-bad',
  'two-things-wrong',
  'nothing-is-wrong',
  'root-behind-it',
  'fine-instrument',
] as const;
export type DifficultyReason = (typeof DIFFICULTY_REASONS)[number];

/** What stands against giving a scenario out (`forbids`), or is worth a second look. Each has a sentence with its remedy. */
export type ProofFinding =
  | { readonly kind: 'not-solvable'; readonly forbids: true; readonly tests: number }
  | ({ readonly kind: 'tools-lacking'; readonly forbids: true } & LackingTools)
  | {
      readonly kind: 'codes-differ';
      readonly forbids: true;
      readonly stated: StatedCodes;
      readonly held: StatedCodes;
    }
  | { readonly kind: 'learners'; readonly forbids: true; readonly fault: ValidityFault }
  | { readonly kind: 'prior'; readonly forbids: true; readonly fault: ValidityFault }
  | {
      readonly kind: 'answer-in-text';
      readonly forbids: true;
      readonly where: TextPlace;
      readonly fault: string;
    }
  /** Par does not fit within a limit of the job. */
  | {
      readonly kind: 'limit-too-tight';
      readonly forbids: true;
      readonly of: 'minutes' | 'dollars';
      readonly limit: number;
      readonly par: number;
      readonly wanted: number;
    }
  | VariantFinding
  | { readonly kind: 'not-told-apart'; readonly forbids: false; readonly items: readonly VerdictItem[] }
  | {
      readonly kind: 'level-differs';
      readonly forbids: false;
      readonly level: number;
      readonly estimate: number;
    }
  /** The tables are of another shop: par and learners are worked out as if the job stood there. */
  | { readonly kind: 'other-shop'; readonly forbids: false; readonly shop: Environment };

/** Texts that a learner sees before the job is closed. */
export const TEXT_PLACES = ['id', 'title', 'summary', 'seed', 'aims', 'complaint', 'history'] as const;
export type TextPlace = (typeof TEXT_PLACES)[number];
