import { normalised } from './information.ts';
import { movesHarness } from './movesHarness.ts';
import { casesOf, keyOfFaults, type OutcomeTable } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';
import { shownTest } from './ShownTest.ts';
import type { Suspect } from './Suspect.ts';
import { type SuspectCases, TestSheet } from './TestSheet.ts';

/**
 * What the standard tests say about the suspects, from their table. All tools are taken to be good: whoever plans by it
 * proves them first.
 */
export class TestEvidence {
  private readonly sheets: (TestSheet | undefined)[] = [];
  private readonly cases: readonly SuspectCases[];

  constructor(
    readonly suspects: readonly Suspect[],
    readonly table: OutcomeTable,
  ) {
    this.cases = casesOfEach(suspects, table.outcomes[0]?.length ?? 0);
  }

  /** Likelihood under each suspect of what a test showed. `test` is its number in the table. */
  likelihoods(test: number, shown: readonly Shown[]): number[] {
    return this.sheet(test).likelihoods(shownTest(shown));
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

  /** The test's column of the table, worked out when first asked for. */
  sheet(test: number): TestSheet {
    let sheet = this.sheets[test];
    if (sheet === undefined) {
      sheet = new TestSheet(
        this.table.outcomes[test] ?? [],
        this.cases,
        movesHarness(this.table.tests[test] ?? ''),
      );
      this.sheets[test] = sheet;
    }
    return sheet;
  }
}

/** Where each suspect's answers stand among the table's cases; faces that the table has not are left out. */
function casesOfEach(suspects: readonly Suspect[], count: number): readonly SuspectCases[] {
  const places = new Map(suspects.map(({ family, level }, s) => [`${family} ${level}`, s]));
  const numbers = new Map(casesOf(suspects).map(({ faults }, c) => [keyOfFaults(faults), c]));
  return suspects.map(({ family, level, faces }, own) => {
    const beside = [level - 1, level + 1].flatMap((next) => places.get(`${family} ${next}`) ?? []);
    const good = faces === null ? count : (numbers.get(keyOfFaults(faces.good)) ?? count);
    if (faces === null || good >= count) return { own, beside, faces: null };
    if (faces.trialOf === 'moved') return { own, beside, faces: { chance: faces.chance, good, bad: null } };
    const bad = numbers.get(keyOfFaults(faces.bad)) ?? count;
    return { own, beside, faces: bad < count ? { chance: faces.chance, good, bad } : null };
  });
}
