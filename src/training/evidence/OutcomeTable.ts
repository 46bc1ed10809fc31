import { runStandardTest } from '../../sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import type { Shown } from './Shown.ts';
import type { Suspect } from './Suspect.ts';

/** What one test shows on one suspect: for each tolerance draw what it showed, in order. */
export type TestDraws = readonly (readonly Shown[])[];

/** What every standard test shows on every suspect, each from a bench as a job begins. Plain JSON. */
export interface OutcomeTable {
  /** Names of the tests. */
  readonly tests: readonly string[];
  /** By test, then by suspect. */
  readonly outcomes: readonly (readonly TestDraws[])[];
}

/** Draws of the table: fewer than the live benches have, since a coach needs no more. Pairs have one. */
const TABLE_DRAWS = 4;
const PAIR_DRAWS = 1;

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

/** Makes the table bit by bit: one suspect's bench a piece. It holds for one version of the rig and one environment. */
export class OutcomeTableMaker {
  private readonly outcomes: (readonly Shown[])[][][];
  private next = 0;
  private readonly pieces: readonly { readonly suspect: number; readonly seed: string }[];

  constructor(
    private readonly suspects: readonly Suspect[],
    private readonly tests: readonly StandardTest[],
    private readonly environment: Environment,
    draws: number = TABLE_DRAWS,
  ) {
    this.outcomes = tests.map(() => suspects.map(() => []));
    this.pieces = suspects.flatMap(({ items }, suspect) =>
      DRAW_SEEDS.slice(0, items.length > 1 ? PAIR_DRAWS : draws).map((seed) => ({ suspect, seed })),
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
      const suspect = piece === undefined ? undefined : this.suspects[piece.suspect];
      if (piece === undefined || test === undefined || suspect === undefined) continue;
      const shown = outcomesOf(test, suspect.faults, piece.seed, this.environment);
      this.outcomes[t]?.[piece.suspect]?.push(shown);
    }
  }

  /** The table so far. */
  get table(): OutcomeTable {
    return { tests: this.tests.map(({ id }) => id), outcomes: this.outcomes };
  }
}
