import { normalised } from './information.ts';
import type { OutcomeTable } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';
import type { Suspect } from './Suspect.ts';
import {
  type ForetoldTest,
  foretoldTest,
  type ShownMark,
  shownMarks,
  testLikelihood,
} from './testLikelihood.ts';

/** How many of a suspect's draws stand for what a test may show. */
const SAMPLES = 2;

/** What a test shows on one suspect in one draw, and its likelihood under every suspect (−1 until worked out). */
interface Sample {
  readonly marks: readonly ShownMark[];
  readonly under: Float64Array;
}

/** What the standard tests say about the suspects, from their table. */
export class TestEvidence {
  private readonly foretold: readonly (readonly ForetoldTest[])[];
  private readonly neighbours: readonly (readonly number[])[];
  /** Likelihood of a sample under each suspect, by test and sample; worked out when first asked for. */
  private readonly samples: readonly Map<number, Sample>[];

  constructor(
    readonly suspects: readonly Suspect[],
    readonly table: OutcomeTable,
  ) {
    this.foretold = table.outcomes.map((bySuspect) => bySuspect.map(foretoldTest));
    this.neighbours = neighboursOf(suspects);
    this.samples = table.outcomes.map(() => new Map());
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
    const rows = this.samples[test];
    if (rows === undefined) return 0;
    const at = truth * SAMPLES + draw;
    let sample = rows.get(at);
    if (sample === undefined) {
      const draws = this.table.outcomes[test]?.[truth] ?? [];
      const shown = draws[Math.min(draw, draws.length - 1)] ?? [];
      sample = { marks: shownMarks(shown), under: new Float64Array(this.suspects.length).fill(-1) };
      rows.set(at, sample);
    }
    const known = sample.under[s] as number;
    if (known >= 0) return known;
    const value = this.under(test, s, sample.marks);
    sample.under[s] = value;
    return value;
  }

  /** How many samples a suspect has. */
  get samplesEach(): number {
    return SAMPLES;
  }

  private under(test: number, s: number, marks: readonly ShownMark[]): number {
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
