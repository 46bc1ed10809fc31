import { runStandardTest } from '../../sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import type { Shown } from './Shown.ts';
import type { Suspect } from './Suspect.ts';

/** What one test shows on one suspect: for each tolerance draw what it showed, in order. */
export type TestDraws = readonly (readonly Shown[])[];

/** What every standard test shows on every case, each from a bench as a job begins. Plain JSON. */
export interface OutcomeTable {
  /** Names of the tests. */
  readonly tests: readonly string[];
  /** By test, then by case: the suspects, then the faces that suspects come and go between (see `casesOf`). */
  readonly outcomes: readonly (readonly TestDraws[])[];
}

/** Draws of the table: fewer than the live benches have, since a coach needs no more. Pairs have one. */
const TABLE_DRAWS = 4;
const PAIR_DRAWS = 1;

/** A truck that the tests of the table are worked on, under its first so many tolerance draws. */
export interface TableCase {
  readonly faults: readonly FaultChoice[];
  readonly draws: number;
}

/**
 * The suspects in their order, then the faces of those that come and go at each trial, where no suspect is that face
 * already.
 */
export function casesOf(suspects: readonly Suspect[], draws: number = TABLE_DRAWS): readonly TableCase[] {
  const cases: TableCase[] = suspects.map(({ faults, items }) => ({
    faults,
    draws: items.length > 1 ? PAIR_DRAWS : draws,
  }));
  const known = new Set(cases.map((one) => keyOfFaults(one.faults)));
  for (const { faces } of suspects) {
    if (faces === null || faces.trialOf === 'moved') continue;
    for (const faults of [faces.good, faces.bad]) {
      if (known.has(keyOfFaults(faults))) continue;
      known.add(keyOfFaults(faults));
      cases.push({ faults, draws });
    }
  }
  return cases;
}

/** The same text for the same faults. */
export function keyOfFaults(faults: readonly FaultChoice[]): string {
  return faults.map(({ fault, severity, whenMoved }) => `${fault} ${severity} ${whenMoved === true}`).join();
}

/** What one test shows on a bench with these faults, done so many times over. */
export function outcomesOf(
  test: StandardTest,
  faults: readonly FaultChoice[],
  seed: string,
  environment: Environment,
  times = 1,
): readonly Shown[] {
  const bench = createWorld({ seed, faults, ...environment });
  return Array.from({ length: times }, () => runStandardTest(test, bench)).flat();
}

/** Tests that leave miles on the truck are drives: too slow for a table, and known from the complaint. */
export function testsForTable(tests: readonly StandardTest[]): readonly StandardTest[] {
  return tests.filter(({ leaves }) => !leaves.includes('miles'));
}

/** A share of the work: part `part` of `of`, counted from 0. */
export interface TableShare {
  readonly part: number;
  readonly of: number;
}

/** Makes the table, or a share of its cases, bit by bit. It holds for one version of the rig and one environment. */
export class OutcomeTableMaker {
  private readonly outcomes: (readonly Shown[])[][][];
  private next = 0;
  private readonly cases: readonly TableCase[];
  private readonly pieces: readonly { readonly number: number; readonly seed: string }[];

  constructor(
    suspects: readonly Suspect[],
    private readonly tests: readonly StandardTest[],
    private readonly environment: Environment,
    draws: number = TABLE_DRAWS,
    share: TableShare = { part: 0, of: 1 },
  ) {
    this.cases = casesOf(suspects, draws);
    this.outcomes = tests.map(() => this.cases.map(() => []));
    this.pieces = this.cases.flatMap((one, number) =>
      number % share.of === share.part
        ? DRAW_SEEDS.slice(0, one.draws).map((seed) => ({ number, seed }))
        : [],
    );
  }

  /** Pieces still to be made. */
  get left(): number {
    return this.pieces.length * this.tests.length - this.next;
  }

  /** Makes at most so many pieces, each one test on one bench. */
  work(mostPieces: number): void {
    for (let i = 0; i < mostPieces && this.left > 0; i++) {
      const piece = this.pieces[Math.floor(this.next / this.tests.length)];
      const t = this.next % this.tests.length;
      this.next++;
      const test = this.tests[t];
      const one = piece === undefined ? undefined : this.cases[piece.number];
      if (piece === undefined || test === undefined || one === undefined) continue;
      this.outcomes[t]?.[piece.number]?.push(outcomesOf(test, one.faults, piece.seed, this.environment));
    }
  }

  /** The table so far; cases of other shares are empty. */
  get table(): OutcomeTable {
    return { tests: this.tests.map(({ id }) => id), outcomes: this.outcomes };
  }
}

/** The shares of one table put together: each case from the share that has it. */
export function joinedTable(shares: readonly OutcomeTable[]): OutcomeTable {
  const [first] = shares;
  if (first === undefined) return { tests: [], outcomes: [] };
  const outcomes = first.outcomes.map((cases, t) =>
    cases.map(
      (_, c) => shares.map((share) => share.outcomes[t]?.[c] ?? []).find((one) => one.length > 0) ?? [],
    ),
  );
  return { tests: first.tests, outcomes };
}
