import { exp, ln } from '../../base/maths.ts';
import type { TestDraws } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';
import { areTheSame, type ShownTest, shownTest, trialsIn, trialsOf } from './ShownTest.ts';
import { type ForetoldTest, foretoldTest, shownMarks, testLikelihood } from './testLikelihood.ts';

/** Where a suspect's answers stand among a test's cases: its own, and its neighbours' in degree. */
export interface SuspectCases {
  readonly own: number;
  readonly beside: readonly number[];
  /** Of what comes and goes: the cases of its faces. `bad` is null where the bad face has no case of its own. */
  readonly faces: { readonly chance: number; readonly good: number; readonly bad: number | null } | null;
}

/** What suspects foretell of one test, alike for all that share it. Numbers are of rows. */
interface Foreteller {
  readonly own: number;
  readonly beside: readonly number[];
  readonly faces: FacesInTest | null;
}

/**
 * By this chance the bad face shows: at each trial, at each run of a test that moves the harness, or as the harness
 * happens to lie. That is the same for all tests that do not move it, so that a quiet one takes nothing from the suspect.
 */
interface FacesInTest {
  readonly chance: number;
  readonly good: number;
  readonly bad: number;
  readonly by: 'trial' | 'run' | 'lie';
}

/** One thing that the test may show: a draw of a row, with the share of it among what a suspect shows. */
export interface TestSample {
  /** Number of the sample, for `sampleUnder`. */
  readonly sample: number;
  readonly share: number;
}

/** How many of a suspect's draws stand for what a test may show; of one that comes and goes, more. */
const SAMPLES = 2;
const MOST_SAMPLES = 4;
/** Draws that are so many times as likely by themselves as by the two faces are something between the two. */
const BETWEEN_FACES = 10;
/** A face shows where what was seen is so many times as likely under it. */
const TOLD_APART = 2;

/**
 * One test's column of the table. Cases that show the same share one row, and suspects of the same rows are one
 * foreteller: what is worked out once holds for all of them.
 */
export class TestSheet {
  private readonly foretellerOf: readonly number[];
  private readonly rows: TestDraws[] = [];
  private readonly rowOf: readonly number[];
  private readonly foretellers: Foreteller[] = [];
  private readonly foretold = new Map<number, ForetoldTest>();
  private readonly shown = new Map<number, ShownTest>();
  private readonly under = new Map<number, Float64Array>();

  /** `moves` tells whether the test moves the harness. */
  constructor(
    cases: readonly TestDraws[],
    suspects: readonly SuspectCases[],
    private readonly moves: boolean,
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
    const known = new Map<string, number>();
    this.foretellerOf = suspects.map((suspect) => {
      const foreteller = this.foreteller(suspect);
      const key = keyOf(foreteller);
      let number = known.get(key);
      if (number === undefined) {
        number = this.foretellers.length;
        known.set(key, number);
        this.foretellers.push(foreteller);
      }
      return number;
    });
  }

  /** Likelihood under each suspect of what the test showed. */
  likelihoods(shown: ShownTest): number[] {
    const each = this.foretellers.map((foreteller) => this.likelihood(shown, foreteller));
    return this.foretellerOf.map((number) => each[number] ?? 0);
  }

  /** What the test may show where this suspect is the truth; shares sum to 1. */
  samplesOf(suspect: number): readonly TestSample[] {
    const { own, faces } = this.foretellerFor(suspect);
    if (faces === null) return this.drawsOf(own, SAMPLES, 1);
    if (faces.by !== 'trial' || this.trialsInRow(own) > 1) return this.drawsOf(own, MOST_SAMPLES, 1);
    return [
      ...this.drawsOf(faces.good, SAMPLES, 1 - faces.chance),
      ...this.drawsOf(faces.bad, SAMPLES, faces.chance),
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
    const value = this.likelihood(this.shownIn(sample), this.foretellerFor(suspect));
    row[foreteller] = value;
    return value;
  }

  /** Chance that another run shows the bad face of this suspect; 0 where it has none, or the test cannot tell it. */
  showing(suspect: number): number {
    const { own, faces } = this.foretellerFor(suspect);
    if (faces === null || faces.by === 'lie') return 0;
    if (faces.by === 'run') return faces.chance;
    if (!this.tellsApart(this.rows[faces.bad]?.[0] ?? [], faces.bad, faces.good)) return 0;
    let quiet = 1;
    for (let trial = this.trialsInRow(own); trial > 0; trial--) quiet *= 1 - faces.chance;
    return 1 - quiet;
  }

  private foreteller({ own, beside, faces }: SuspectCases): Foreteller {
    const ownRow = this.rowAt(own);
    if (faces === null) return { own: ownRow, beside: beside.map((one) => this.rowAt(one)), faces: null };
    const good = this.rowAt(faces.good);
    const alwaysGood = { own: good, beside: [], faces: null };
    if (faces.bad !== null) {
      const bad = this.rowAt(faces.bad);
      if (bad === good) return alwaysGood;
      const inTest = { chance: faces.chance, good, bad, by: 'trial' } as const;
      // Where many trials make one reading, it lies between the faces: then the draws themselves foretell it.
      if (this.liesBetween(ownRow, inTest))
        return { own: ownRow, beside: beside.map((one) => this.rowAt(one)), faces: null };
      return { own: ownRow, beside: [], faces: inTest };
    }
    // Movements cannot be told one from another in a test: what the draws showed of the bad face stands for it.
    const draws = this.rows[ownRow] ?? [];
    const bad = ownRow === good ? [] : draws.filter((shown) => this.tellsApart(shown, ownRow, good));
    if (bad.length === 0) return alwaysGood;
    this.rows.push(bad);
    // One imagined draw, half of it bad, keeps four draws from claiming a certainty.
    const chance = (bad.length + 0.5) / (draws.length + 1);
    return {
      own: ownRow,
      beside: [],
      faces: { chance, good, bad: this.rows.length - 1, by: this.moves ? 'run' : 'lie' },
    };
  }

  private liesBetween(row: number, faces: FacesInTest): boolean {
    const trials = this.trialsInRow(row);
    return (this.rows[row] ?? []).some(
      (shown) => this.underRow(row, shown) > BETWEEN_FACES * this.comesAndGoes(shown, faces, trials),
    );
  }

  private tellsApart(shown: readonly Shown[], own: number, other: number): boolean {
    return own !== other && this.underRow(own, shown) > TOLD_APART * this.underRow(other, shown);
  }

  /** The row's first draws, those that showed the very same taken together. */
  private drawsOf(row: number, most: number, share: number): readonly TestSample[] {
    const draws = (this.rows[row] ?? []).slice(0, most);
    const samples: { sample: number; share: number }[] = [];
    for (const [d, shown] of draws.entries()) {
      const first = draws.findIndex((one) => one === shown || areTheSame(one, shown));
      const sample = row * MOST_SAMPLES + first;
      const there = first < d ? samples.find((one) => one.sample === sample) : undefined;
      if (there === undefined) samples.push({ sample, share: share / draws.length });
      else there.share += share / draws.length;
    }
    return samples;
  }

  private shownIn(sample: number): ShownTest {
    let shown = this.shown.get(sample);
    if (shown === undefined) {
      const row = this.rows[Math.floor(sample / MOST_SAMPLES)];
      shown = shownTest(row?.[sample % MOST_SAMPLES] ?? []);
      this.shown.set(sample, shown);
    }
    return shown;
  }

  private likelihood({ marks, shown }: ShownTest, { own, beside, faces }: Foreteller): number {
    if (faces !== null) return this.comesAndGoes(shown, faces, this.trialsInRow(own));
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
    shown: readonly Shown[],
    { chance, good, bad, by }: FacesInTest,
    trialsInRun: number,
  ): number {
    const trials = trialsIn(shown);
    const runs = Math.max(Math.floor(trials / Math.max(trialsInRun, 1) + 0.5), 1);
    let log = 0;
    const [shownGood, shownBad]: [Shown[], Shown[]] = [[], []];
    let [before, asGood, asBad]: [readonly Shown[], number, number] = [[], 1, 1];
    const count = by === 'lie' ? 1 : by === 'run' ? runs : trials;
    for (const trial of trialsOf(shown, count)) {
      if (!areTheSame(trial, before))
        [asGood, asBad] = [this.underRow(good, trial), this.underRow(bad, trial)];
      before = trial;
      const better = Math.max(asGood, asBad);
      const mixed = (1 - chance) * asGood + chance * asBad;
      if (better > 0) log += ln((by === 'lie' ? Math.max(mixed, asGood) : mixed) / better);
      (asGood >= asBad ? shownGood : shownBad).push(...trial);
    }
    return exp(log) * this.underRow(good, shownGood) * this.underRow(bad, shownBad);
  }

  private underRow(row: number, shown: readonly Shown[]): number {
    return shown.length === 0 ? 1 : testLikelihood(shownMarks(shown), this.foretoldBy(row), []);
  }

  private trialsInRow(row: number): number {
    return trialsIn(this.rows[row]?.[0] ?? []);
  }

  private foretoldBy(row: number): ForetoldTest {
    let foretold = this.foretold.get(row);
    if (foretold === undefined) {
      foretold = foretoldTest(this.rows[row] ?? []);
      this.foretold.set(row, foretold);
    }
    return foretold;
  }

  private foretellerFor(suspect: number): Foreteller {
    return this.foretellers[this.foretellerOf[suspect] ?? 0] ?? { own: 0, beside: [], faces: null };
  }

  private rowAt(number: number): number {
    return this.rowOf[number] ?? 0;
  }
}

function keyOf({ own, beside, faces }: Foreteller): string {
  const rows = `${own} ${beside.join()}`;
  return faces === null ? rows : `${rows} ${faces.chance} ${faces.good} ${faces.bad}`;
}
