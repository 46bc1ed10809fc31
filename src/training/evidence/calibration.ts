import { Random } from '../../base/Random.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { bestNextTest } from './bestNextTest.ts';
import type { Environment } from './environment.ts';
import { outcomesOf } from './OutcomeTable.ts';
import { Posterior } from './Posterior.ts';
import type { Shown } from './Shown.ts';
import type { Suspect } from './Suspect.ts';
import type { TestEvidence } from './TestEvidence.ts';

/** One sitting of the calibration: what the evidence said of the leading item, and whether it was so. */
export interface CalibrationClaim {
  readonly truth: string;
  readonly claimed: string;
  readonly right: boolean;
  /** Chance of the claimed item on everything shown. */
  readonly shown: number;
  /** On those tests alone that spoke for it. */
  readonly confirming: number;
}

/** Which chance of a claim is held against the truth: `lower` is the lower of the two, as a verdict is judged. */
export type ClaimBasis = 'shown' | 'confirming' | 'lower';

export function chanceOfClaim({ shown, confirming }: CalibrationClaim, basis: ClaimBasis): number {
  if (basis === 'lower') return Math.min(shown, confirming);
  return basis === 'shown' ? shown : confirming;
}

/** Share of sittings in which every test is done again and again. */
const HEAVY_SHARE = 0.5;
const FEWEST_TESTS = 2;
const MOST_TESTS = 9;
const REPEATS = 4;
/** Half of the tests are chosen well, half anyhow. */
const CHOSEN_WELL = 0.5;

/** Everything a calibration sitting is held against. */
export interface CalibrationBench {
  readonly prior: readonly number[];
  readonly evidence: TestEvidence;
  readonly tests: readonly StandardTest[];
  readonly minutes: readonly number[];
  readonly environment: Environment;
}

/**
 * One random sitting: the truth is drawn from the prior, with tolerances of a seed that no suspect has and any degree of
 * its fault; tests are done in random number and order.
 */
export function calibrationSitting(bench: CalibrationBench, seed: string): CalibrationClaim {
  const { prior, evidence, tests, minutes } = bench;
  const random = Random.of(seed, 'calibration');
  const truth = evidence.suspects[drawn(prior, random.next())] as Suspect;
  const faults = truth.faults.map((choice) => ofAnyDegree(choice, truth, random));
  const heavy = random.next() < HEAVY_SHARE;
  const count = FEWEST_TESTS + Math.floor(random.next() * (MOST_TESTS - FEWEST_TESTS + 1));
  const runs = new Map<number, readonly Shown[]>();
  let chances = prior;
  for (let i = 0; i < count; i++) {
    const any = Math.floor(random.next() * tests.length);
    const well = random.next() < CHOSEN_WELL;
    const test = well ? (bestNextTest(chances, evidence, minutes, new Set(runs.keys()))?.test ?? any) : any;
    if (runs.has(test)) continue;
    const times = heavy ? REPEATS : 1;
    runs.set(test, repeated(bench, test, faults, seed, times));
    chances = evidence.after(prior, runs);
  }
  return claimOf(bench, truth, chances, runs);
}

/** A test done so often on one bench: what comes and goes comes and goes, everything else stays. */
function repeated(
  { tests, environment }: CalibrationBench,
  test: number,
  faults: readonly FaultChoice[],
  seed: string,
  times: number,
): readonly Shown[] {
  const one = tests[test];
  return one === undefined ? [] : outcomesOf(one, faults, seed, environment, times);
}

function claimOf(
  { prior, evidence }: CalibrationBench,
  truth: Suspect,
  chances: readonly number[],
  runs: ReadonlyMap<number, readonly Shown[]>,
): CalibrationClaim {
  const { item, chance } = new Posterior(evidence.suspects, [], chances, []).leading();
  const chanceOn = (of: readonly number[]): number =>
    new Posterior(evidence.suspects, [], of, []).ofItem(item);
  const before = chanceOn(prior);
  const speaking = [...runs].filter(
    ([test, shown]) => chanceOn(evidence.updated(prior, test, shown)) > before,
  );
  const confirming = chanceOn(evidence.after(prior, new Map(speaking)));
  const right = truth.item === item || truth.items.some((one) => one === item);
  return { truth: truth.id, claimed: item, right, shown: chance, confirming };
}

function drawn(chances: readonly number[], at: number): number {
  let left = at;
  for (const [s, chance] of chances.entries()) {
    left -= chance;
    if (left < 0) return s;
  }
  return chances.length - 1;
}

/** A degree anywhere in the fault's range, whatever degrees the suspects take. */
function ofAnyDegree(choice: FaultChoice, { items, family }: Suspect, random: Random): FaultChoice {
  const severity = random.next();
  return items.length > 1 || family !== choice.fault ? choice : { ...choice, severity };
}

/** One bin of the table: claims of about one chance, their mean, and the share of them that were right. */
export interface CalibrationBin {
  readonly claims: number;
  readonly meanChance: number;
  readonly rightShare: number;
}

export interface CalibrationTable {
  readonly claims: number;
  /** Ten bins of the claimed chance, the lowest first. */
  readonly bins: readonly CalibrationBin[];
  /** Mean distance of claimed and true, weighed by the claims. */
  readonly expectedError: number;
  /** Of claims of 95 % or more, how many there were and the share that was right; null where there were none. */
  readonly certain: { readonly claims: number; readonly rightShare: number | null };
}

const BINS = 10;

/** Claims against the truth, in ten bins. */
export function calibrationTable(claims: readonly CalibrationClaim[], basis: ClaimBasis): CalibrationTable {
  const chanceOf = (claim: CalibrationClaim): number => chanceOfClaim(claim, basis);
  const bins = Array.from({ length: BINS }, (_, bin): CalibrationBin => {
    const within = claims.filter((claim) => Math.min(Math.floor(chanceOf(claim) * BINS), BINS - 1) === bin);
    const n = Math.max(within.length, 1);
    return {
      claims: within.length,
      meanChance: within.reduce((sum, claim) => sum + chanceOf(claim), 0) / n,
      rightShare: within.filter(({ right }) => right).length / n,
    };
  });
  const certain = claims.filter((claim) => chanceOf(claim) >= 0.95);
  return {
    claims: claims.length,
    bins,
    expectedError: bins.reduce(
      (sum, bin) =>
        sum + (bin.claims / Math.max(claims.length, 1)) * Math.abs(bin.meanChance - bin.rightShare),
      0,
    ),
    certain: {
      claims: certain.length,
      rightShare: certain.length === 0 ? null : certain.filter(({ right }) => right).length / certain.length,
    },
  };
}
