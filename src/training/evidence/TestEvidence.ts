import { normalised } from './information.ts';
import type { OutcomeTable } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';
import type { Suspect } from './Suspect.ts';
import { type ForetoldTest, foretoldTest, shownMarks, testLikelihood } from './testLikelihood.ts';

/** How many of a suspect's draws stand for what a test may show. */
const SAMPLES = 2;

/** What the standard tests say about the suspects, from their table. */
export class TestEvidence {
  private readonly foretold: readonly (readonly ForetoldTest[])[];
  private readonly neighbours: readonly (readonly number[])[];
  /** Likelihood of sample `o` under suspect `s`, by test; worked out when first asked for. */
  private readonly samples: readonly (readonly Float64Array[])[];

  constructor(
    readonly suspects: readonly Suspect[],
    readonly table: OutcomeTable,
  ) {
    this.foretold = table.outcomes.map((bySuspect) => bySuspect.map(foretoldTest));
    this.neighbours = neighboursOf(suspects);
    this.samples = table.outcomes.map((bySuspect) =>
      Array.from({ length: bySuspect.length * SAMPLES }, () => new Float64Array(suspects.length).fill(-1)),
    );
  }

  /** Likelihood under each suspect of what a test showed. `test` is its number in the table. */
  likelihoods(test: number, shown: readonly Shown[]): number[] {
    const marks = shownMarks(shown);
    return this.suspects.map((_, s) => this.under(test, s, marks));
  }

  /** Bayes by one test. */
  updated(prior: readonly number[], test: number, shown: readonly Shown[]): number[] {
    const likelihoods = this.likelihoods(test, shown);
    return normalised(prior.map((p, s) => p * (likelihoods[s] ?? 0)));
  }

  /**
   * Chances after all runs of all tests. Runs of one test are repeats of one another: they share what repeats share.
   * `runs` holds what was shown, run after run, by the test's number.
   */
  after(prior: readonly number[], runs: ReadonlyMap<number, readonly Shown[]>): number[] {
    let chances = [...prior];
    for (const [test, shown] of runs) chances = this.updated(chances, test, shown);
    return chances;
  }

  /** Likelihood under suspect `s` of what a test shows on suspect `truth` in one of its first draws. */
  sample(test: number, truth: number, draw: number, s: number): number {
    const row = this.samples[test]?.[truth * SAMPLES + draw];
    if (row === undefined) return 0;
    const known = row[s] as number;
    if (known >= 0) return known;
    const draws = this.table.outcomes[test]?.[truth] ?? [];
    const shown = draws[Math.min(draw, draws.length - 1)] ?? [];
    const value = this.under(test, s, shownMarks(shown));
    row[s] = value;
    return value;
  }

  /** How many samples a suspect has. */
  get samplesEach(): number {
    return SAMPLES;
  }

  private under(test: number, s: number, marks: ReturnType<typeof shownMarks>): number {
    const rows = this.foretold[test] ?? [];
    const own = rows[s];
    if (own === undefined) return 0;
    const beside = (this.neighbours[s] ?? []).flatMap((n) => rows[n] ?? []);
    return testLikelihood(marks, own, beside);
  }
}

function neighboursOf(suspects: readonly Suspect[]): readonly (readonly number[])[] {
  const places = new Map(suspects.map(({ family, level }, s) => [`${family} ${level}`, s]));
  return suspects.map(({ family, level }) =>
    [level - 1, level + 1].flatMap((next) => places.get(`${family} ${next}`) ?? []),
  );
}
