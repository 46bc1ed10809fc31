import type { VerdictItem } from '../sitting/SittingAction.ts';
import { GAMING_LEARNERS, LEARNERS, type LearnerName } from './Learner.ts';

/** What one sitting of a simulated learner came to. */
export interface SatScore {
  readonly scenario: string;
  readonly learner: LearnerName;
  readonly seed: string;
  readonly score: number;
  readonly named: VerdictItem;
  readonly right: boolean;
}

/** What a scenario is by itself, whoever sits it. */
export interface ScenarioOdds {
  readonly scenario: string;
  /** Chance of the true item after the complaint; where several are wrong, of the likeliest. */
  readonly prior: number;
  /** Whether what the complaint makes likeliest is the truth. */
  readonly favouriteIsTrue: boolean;
}

/** How the scores of one learner at one scenario lie. */
export interface LearnerScores {
  readonly learner: LearnerName;
  readonly median: number;
  readonly lower: number;
  readonly upper: number;
  readonly rightShare: number;
}

/** What a scenario fails by: a figure, and the limit that it misses. */
export type ValidityFault =
  | {
      readonly kind: 'median-below' | 'median-above';
      readonly learner: LearnerName;
      readonly figure: number;
      readonly limit: number;
    }
  | {
      readonly kind: 'not-below-by-the-book';
      readonly learner: LearnerName;
      readonly figure: number;
      readonly limit: number;
    }
  | {
      readonly kind: 'prior-below' | 'prior-above' | 'careful-names-below';
      readonly figure: number;
      readonly limit: number;
    };

export interface ScenarioValidity extends ScenarioOdds {
  readonly sittings: number;
  readonly learners: readonly LearnerScores[];
  readonly faults: readonly ValidityFault[];
  /** Sittings under the same seed in which the careful learner beat the parts changer, and how many there were. */
  readonly paired: { readonly won: number; readonly of: number };
}

export interface ValidityTable {
  readonly scenarios: readonly ScenarioValidity[];
  readonly paired: { readonly won: number; readonly of: number; readonly asked: number };
  readonly holds: boolean;
}

/** Medians that a scenario must reach, and those that it must not pass. */
export const LEAST_MEDIAN: Readonly<Partial<Record<LearnerName, number>>> = {
  careful: 90,
  'by-the-book': 75,
};
export const MOST_MEDIAN: Readonly<Partial<Record<LearnerName, number>>> = {
  hasty: 80,
  'parts-changer': 30,
  guesser: 25,
  reckless: 40,
};
const MOST_BY_GAMING = 45;
/** The true item's chance after the complaint: neither out of mind nor known beforehand. */
const LEAST_PRIOR = 0.02;
const MOST_PRIOR = 0.6;
const CAREFUL_NAMES = 0.95;
/** Of three hundred paired sittings. */
const PAIRED_SHARE = 297 / 300;

/** How one scenario measures what learners can do. */
export function scenarioValidity(odds: ScenarioOdds, sittings: readonly SatScore[]): ScenarioValidity {
  const of = sittings.filter(({ scenario }) => scenario === odds.scenario);
  const learners = [...LEARNERS, ...GAMING_LEARNERS].flatMap((learner) => {
    const own = of.filter((one) => one.learner === learner);
    return own.length === 0 ? [] : [scoresOf(learner, own)];
  });
  return {
    ...odds,
    sittings: of.length,
    learners,
    faults: scenarioFaults(odds, learners),
    paired: pairsOf(of),
  };
}

/** What a scenario fails by, as far as these learners have sat it. */
export function scenarioFaults(
  odds: Pick<ScenarioOdds, 'prior' | 'favouriteIsTrue'>,
  learners: readonly LearnerScores[],
): readonly ValidityFault[] {
  return [...faultsOfOdds(odds), ...learners.flatMap((one) => faultsOf(one, learners, odds))];
}

/** All scenarios together. */
export function validityTable(scenarios: readonly ScenarioValidity[]): ValidityTable {
  const won = scenarios.reduce((sum, { paired }) => sum + paired.won, 0);
  const of = scenarios.reduce((sum, { paired }) => sum + paired.of, 0);
  const asked = -Math.floor(-PAIRED_SHARE * of);
  const holds = won >= asked && scenarios.every(({ faults }) => faults.length === 0);
  return { scenarios, paired: { won, of, asked }, holds };
}

function scoresOf(learner: LearnerName, sittings: readonly SatScore[]): LearnerScores {
  const scores = sittings.map(({ score }) => score).sort((a, b) => a - b);
  return {
    learner,
    median: quantile(scores, 0.5),
    lower: quantile(scores, 0.25),
    upper: quantile(scores, 0.75),
    rightShare: sittings.filter(({ right }) => right).length / sittings.length,
  };
}

/** Between two scores in proportion; `scores` rise and are not empty. */
export function quantile(scores: readonly number[], share: number): number {
  const at = (scores.length - 1) * share;
  const below = scores[Math.floor(at)] ?? 0;
  const above = scores[Math.min(Math.floor(at) + 1, scores.length - 1)] ?? below;
  return below + (at - Math.floor(at)) * (above - below);
}

function faultsOfOdds({ prior }: Pick<ScenarioOdds, 'prior'>): readonly ValidityFault[] {
  if (prior < LEAST_PRIOR) return [{ kind: 'prior-below', figure: prior, limit: LEAST_PRIOR }];
  if (prior > MOST_PRIOR) return [{ kind: 'prior-above', figure: prior, limit: MOST_PRIOR }];
  return [];
}

function faultsOf(
  { learner, median, rightShare }: LearnerScores,
  all: readonly LearnerScores[],
  { favouriteIsTrue }: Pick<ScenarioOdds, 'favouriteIsTrue'>,
): readonly ValidityFault[] {
  const faults: ValidityFault[] = [];
  const least = LEAST_MEDIAN[learner];
  const most = mostFor(learner, favouriteIsTrue);
  if (least !== undefined && median < least)
    faults.push({ kind: 'median-below', learner, figure: median, limit: least });
  if (most !== undefined && median > most)
    faults.push({ kind: 'median-above', learner, figure: median, limit: most });
  const book = all.find((one) => one.learner === 'by-the-book')?.median;
  if (learner === 'hasty' && book !== undefined && median >= book)
    faults.push({ kind: 'not-below-by-the-book', learner, figure: median, limit: book });
  if (learner === 'careful' && rightShare < CAREFUL_NAMES)
    faults.push({ kind: 'careful-names-below', figure: rightShare, limit: CAREFUL_NAMES });
  return faults;
}

/** Who names what it usually is may well be right where it is that. */
function mostFor(learner: LearnerName, favouriteIsTrue: boolean): number | undefined {
  if (!GAMING_LEARNERS.some((name) => name === learner)) return MOST_MEDIAN[learner];
  return learner === 'names-the-favourite' && favouriteIsTrue ? undefined : MOST_BY_GAMING;
}

function pairsOf(sittings: readonly SatScore[]): ScenarioValidity['paired'] {
  const careful = sittings.filter(({ learner }) => learner === 'careful');
  const pairs = careful.flatMap((one) => {
    const other = sittings.find(({ learner, seed }) => learner === 'parts-changer' && seed === one.seed);
    return other === undefined ? [] : [one.score > other.score];
  });
  return { won: pairs.filter((won) => won).length, of: pairs.length };
}
