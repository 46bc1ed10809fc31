import { exp, ln } from '../../base/maths.ts';
import type { TestDraws } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';
import { type ShownTest, shownTest, trialsOf } from './ShownTest.ts';
import { type ForetoldTest, foretoldTest, shownMarks, testLikelihood } from './testLikelihood.ts';

/** Where a suspect's answers stand among a test's cases: its own, its neighbours' in degree, and its faces'. */
export interface SuspectCases {
  readonly own: number;
  readonly beside: readonly number[];
  /** For what comes and goes at each trial: the chance of its bad face, and the cases of both. */
  readonly faces: { readonly chance: number; readonly good: number; readonly bad: number } | null;
}

/** Suspects that one test foretells the same of: rows in place of cases. */
type Foreteller = SuspectCases;

/** One thing that the test may show: a draw of a row, with the share of it among what a suspect shows. */
export interface TestSample {
  /** Number of the sample, for `under`. */
  readonly sample: number;
  readonly share: number;
}

/** How many of a suspect's draws stand for what a test may show; of one that comes and goes, all four. */
const SAMPLES = 2;
const SAMPLES_OF_COMING = 4;

/**
 * One test's column of the table. Cases that show the same share one row, and suspects of the same rows are one
 * foreteller: what is worked out once holds for all of them.
 */
export class TestSheet {
  readonly foretellerOf: readonly number[];
  private readonly rows: TestDraws[] = [];
  private readonly rowOf: readonly number[];
  private readonly foretellers: Foreteller[] = [];
  private readonly foretold = new Map<number, ForetoldTest>();
  private readonly shown = new Map<number, ShownTest>();
  private readonly under = new Map<number, Float64Array>();

  constructor(
    cases: readonly TestDraws[],
    private readonly suspects: readonly SuspectCases[],
  ) {
    const numbers = new Map<TestDraws, number>();
    this.rowOf = cases.map((row) => {
      let number = numbers.get(row);
      if (number === undefined) {
        number = this.rows.length;
        numbers.set(row, number);
        this.rows.push(row);
      }
      return number;
    });
    this.foretellerOf = this.sortedOut();
  }

  /** Likelihood under each suspect of what the test showed. */
  likelihoods(shown: ShownTest): number[] {
    const each = this.foretellers.map((foreteller) => this.likelihood(shown, foreteller));
    return this.foretellerOf.map((number) => each[number] ?? 0);
  }

  /** What the test may show where this suspect is the truth; shares sum to 1. */
  samplesOf(suspect: number): readonly TestSample[] {
    const { own, faces } = this.suspects[suspect] as SuspectCases;
    const ownRow = this.rowAt(own);
    if (faces === null) return this.drawsOf(ownRow, SAMPLES, 1);
    if (trialsOf(this.rows[ownRow]?.[0] ?? []).length > 1) return this.drawsOf(ownRow, SAMPLES_OF_COMING, 1);
    const { chance, good, bad } = faces;
    return [
      ...this.drawsOf(this.rowAt(good), SAMPLES, 1 - chance),
      ...this.drawsOf(this.rowAt(bad), SAMPLES, chance),
    ];
  }

  /** Likelihood of a sample under a suspect. */
  sampleUnder(sample: number, suspect: number): number {
    const foreteller = this.foretellerOf[suspect] ?? 0;
    let row = this.under.get(sample);
    if (row === undefined) {
      row = new Float64Array(this.foretellers.length).fill(-1);
      this.under.set(sample, row);
    }
    const known = row[foreteller] as number;
    if (known >= 0) return known;
    const value = this.likelihood(this.shownIn(sample), this.foretellers[foreteller] as Foreteller);
    row[foreteller] = value;
    return value;
  }

  private drawsOf(row: number, most: number, share: number): readonly TestSample[] {
    const count = Math.min(most, Math.max(this.rows[row]?.length ?? 0, 1));
    return Array.from({ length: count }, (_, draw) => ({
      sample: row * SAMPLES_OF_COMING + draw,
      share: share / count,
    }));
  }

  private shownIn(sample: number): ShownTest {
    let shown = this.shown.get(sample);
    if (shown === undefined) {
      const row = this.rows[Math.floor(sample / SAMPLES_OF_COMING)];
      shown = shownTest(row?.[sample % SAMPLES_OF_COMING] ?? []);
      this.shown.set(sample, shown);
    }
    return shown;
  }

  private likelihood({ marks, trials }: ShownTest, { own, beside, faces }: Foreteller): number {
    if (faces !== null) return this.comesAndGoes(trials, faces);
    return testLikelihood(
      marks,
      this.foretoldBy(own),
      beside.map((row) => this.foretoldBy(row)),
    );
  }

  /**
   * At each trial the bad face shows by its chance, else the good one, each trial anew; within a face everything is shared
   * as for what is always there. So k bad trials of n weigh p^k·(1 − p)^(n − k).
   */
  private comesAndGoes(
    trials: ShownTest['trials'],
    { chance, good, bad }: NonNullable<Foreteller['faces']>,
  ): number {
    const under = (row: number, shown: readonly Shown[]): number =>
      testLikelihood(shownMarks(shown), this.foretoldBy(row), []);
    let log = 0;
    const [shownGood, shownBad]: [Shown[], Shown[]] = [[], []];
    for (const trial of trials) {
      const [asGood, asBad] = [under(good, trial), under(bad, trial)];
      const better = Math.max(asGood, asBad);
      if (better > 0) log += ln(((1 - chance) * asGood + chance * asBad) / better);
      (asGood >= asBad ? shownGood : shownBad).push(...trial);
    }
    return exp(log) * under(good, shownGood) * under(bad, shownBad);
  }

  private foretoldBy(row: number): ForetoldTest {
    let foretold = this.foretold.get(row);
    if (foretold === undefined) {
      foretold = foretoldTest(this.rows[row] ?? []);
      this.foretold.set(row, foretold);
    }
    return foretold;
  }

  private sortedOut(): readonly number[] {
    const numbers = new Map<string, number>();
    return this.suspects.map(({ own, beside, faces }) => {
      const foreteller: Foreteller = {
        own: this.rowAt(own),
        beside: beside.map((one) => this.rowAt(one)),
        faces:
          faces === null
            ? null
            : { chance: faces.chance, good: this.rowAt(faces.good), bad: this.rowAt(faces.bad) },
      };
      const { chance, good, bad } = foreteller.faces ?? { chance: 0, good: -1, bad: -1 };
      const key =
        foreteller.faces === null
          ? `${foreteller.own} ${foreteller.beside.join()}`
          : `face ${chance} ${good} ${bad}`;
      let number = numbers.get(key);
      if (number === undefined) {
        number = this.foretellers.length;
        numbers.set(key, number);
        this.foretellers.push(foreteller);
      }
      return number;
    });
  }

  private rowAt(number: number): number {
    return this.rowOf[number] ?? 0;
  }
}
