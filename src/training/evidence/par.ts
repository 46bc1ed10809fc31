import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { testMinutes } from '../../sim/rigs/standardTests/testMinutes.ts';
import { bookMinutes } from '../sitting/book.ts';
import { bestNextTest, isProven, LEAST_BITS, LEAST_MINUTES, type NextTest } from './bestNextTest.ts';
import { bestDirectTest, isDirect } from './directProof.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { normalised } from './information.ts';
import { Posterior } from './Posterior.ts';
import type { Shown } from './Shown.ts';
import { trialsIn } from './ShownTest.ts';
import { NOTHING_WRONG } from './suspects.ts';
import { proofFails, proofsFor, toolsProvenBy } from './toolProofs.ts';
import { worthOfRepeat } from './worthOfRepeat.ts';

/** What a plan works on: a truck and its tools. */
export interface PlanBench {
  /** One more run of a test. */
  show(test: StandardTest): readonly Shown[];
  /** A good one in the place of a tool. Says whether the old one was bad. */
  renew(tool: ItemId): boolean;
}

/** The part of the tables that a plan goes by. */
export type PlanTables = Pick<EvidenceTables, 'evidence' | 'tests' | 'minutes'>;

/** One run of a test; `again` where the run before it was of the same test, so that nothing had to be set up. */
export interface PlanStep {
  readonly test: StandardTestId;
  readonly again: boolean;
}

/** The plan of the best next test from the complaint to the proof, on one truth. */
export interface Plan {
  /** Runs in the order done, tool proofs among them. */
  readonly steps: readonly PlanStep[];
  /** Tools that failed their proof and were replaced. */
  readonly toolsRenewed: readonly ItemId[];
  /** False where no test was left before anything stood proven. */
  readonly proven: boolean;
  /** Chances of the suspects at the end. */
  readonly chances: readonly number[];
  /** What each test showed, run after run, by its number. */
  readonly runs: ReadonlyMap<number, readonly Shown[]>;
}

const MOST_STEPS = 60;
/** A careful hand gives up where the best test would tell less than this, bits. */
const WORTH_A_PLAN = 0.015;
/** Trials of one test after which a repeat is no longer asked: at a chance of 0.3 nine quiet ones leave 4 %. */
const MOST_TRIALS = 9;

/**
 * Follows the best next test to the goal, minute for minute of the book; `barred` are tests that it may not use. A test is
 * repeated where what comes and goes makes a repeat worth more than any new test. What stands proven by elimination
 * alone is proven directly at the end, where a test can. Tools are proven before their first use, and the plan looks at the
 * truck with good tools only: a tool whose proof fails is replaced and proven again, for the table knows good tools alone.
 */
export function planOf(
  prior: readonly number[],
  tables: PlanTables,
  bench: PlanBench,
  barred: ReadonlySet<StandardTestId> = new Set(),
): Plan {
  const work = new PlanInWork(prior, tables, bench, barred);
  while (work.steps.length < MOST_STEPS) {
    const next = work.next();
    if (next === null) break;
    work.work(next.test);
  }
  const { steps, toolsRenewed, chances, runs } = work;
  return { steps, toolsRenewed, chances, runs, proven: isProven(tables.evidence.suspects, chances) };
}

/** Book minutes of another run of a test that stands set up. */
export function minutesAgain(test: StandardTest): number {
  return testMinutes({ ...test, prepares: 'as-found', undo: [] }, bookMinutes);
}

/** Book minutes of a plan's runs. */
export function minutesOfSteps(steps: readonly PlanStep[], { tests, minutes }: PlanTables): number {
  return steps.reduce((sum, { test: id, again }) => {
    const number = tests.findIndex((test) => test.id === id);
    const test = tests[number];
    if (test === undefined) return sum;
    return sum + (again ? minutesAgain(test) : (minutes[number] ?? 0));
  }, 0);
}

function better(one: NextTest | null, other: NextTest | null): NextTest | null {
  if (one === null || other === null) return one ?? other;
  return perMinute(other) > perMinute(one) ? other : one;
}

const perMinute = ({ bits, minutes }: NextTest): number => bits / minutes;

class PlanInWork {
  readonly steps: PlanStep[] = [];
  readonly toolsRenewed: ItemId[] = [];
  readonly runs = new Map<number, readonly Shown[]>();
  chances: readonly number[];
  /** Tests whose runs have all shown the same so far. */
  private readonly quiet = new Set<number>();

  private readonly barred: readonly number[];
  /** What all runs of a test say, by its number. */
  private readonly likelihoods = new Map<number, readonly number[]>();

  constructor(
    private readonly prior: readonly number[],
    private readonly tables: PlanTables,
    private readonly bench: PlanBench,
    barred: ReadonlySet<StandardTestId>,
  ) {
    this.chances = prior;
    this.barred = tables.tests.flatMap(({ id }, number) => (barred.has(id) ? [number] : []));
  }

  /** What to do now; null at the goal, and where nothing is left that tells anything. */
  next(): NextTest | null {
    const { evidence, minutes } = this.tables;
    const done = new Set([...this.barred, ...this.runs.keys()]);
    if (isProven(evidence.suspects, this.chances)) {
      const { item } = new Posterior(evidence.suspects, [], this.chances, []).leading();
      const enough = item === NOTHING_WRONG || isDirect(evidence, this.chances, item, this.runs);
      return enough ? null : bestDirectTest(evidence, this.chances, item, minutes, done);
    }
    const fresh = bestNextTest(this.chances, evidence, minutes, done);
    const repeat = this.bestRepeat();
    const best = better(fresh, repeat);
    return best === null || best.bits < WORTH_A_PLAN ? null : best;
  }

  /** Works a test, with the proofs of its tools before it. */
  work(number: number): void {
    const { tests } = this.tables;
    const test = tests[number];
    if (test === undefined) return;
    for (const proof of proofsFor(test)) {
      const at = tests.findIndex(({ id }) => id === proof);
      if (at >= 0 && at !== number && !this.runs.has(at) && !this.barred.includes(at)) this.work(at);
    }
    let shown = this.run(test);
    const tools = toolsProvenBy(test);
    if (tools.length > 0 && proofFails(this.tables.evidence, this.chances, number, shown)) {
      const bad = tools.filter((tool) => this.bench.renew(tool));
      this.toolsRenewed.push(...bad);
      if (bad.length > 0) shown = this.run(test);
    }
    const before = this.runs.get(number);
    if (before === undefined || areAlike(before, shown)) this.quiet.add(number);
    else this.quiet.delete(number);
    const all = [...(before ?? []), ...shown];
    this.runs.set(number, all);
    this.likelihoods.set(number, this.tables.evidence.likelihoods(number, all));
    this.chances = [...this.likelihoods.values()].reduce<readonly number[]>(
      (chances, row) => normalised(chances.map((chance, s) => chance * (row[s] ?? 0))),
      this.prior,
    );
  }

  /** The repeat worth most for its minutes; null where none is worth a hand's turn. While it stands set up, a repeat is cheap. */
  private bestRepeat(): NextTest | null {
    const { evidence, tests, minutes } = this.tables;
    const standing = this.steps.at(-1)?.test;
    let best: NextTest | null = null;
    for (const number of this.quiet) {
      const test = tests[number];
      if (test === undefined || trialsIn(this.runs.get(number) ?? []) >= MOST_TRIALS) continue;
      const bits = worthOfRepeat(this.chances, evidence, number);
      if (bits < LEAST_BITS) continue;
      const takes = test.id === standing ? minutesAgain(test) : (minutes[number] ?? 0);
      const next = { test: number, bits, minutes: Math.max(takes, LEAST_MINUTES) };
      if (best === null || perMinute(next) > perMinute(best)) best = next;
    }
    return best;
  }

  private run(test: StandardTest): readonly Shown[] {
    this.steps.push({ test: test.id, again: this.steps.at(-1)?.test === test.id });
    return this.bench.show(test);
  }
}

/** Whether yes, no and words of a run are those of the runs before it. */
function areAlike(before: readonly Shown[], shown: readonly Shown[]): boolean {
  const known = new Set(before.map(keyOf));
  return shown.every((one) => known.has(keyOf(one)));
}

function keyOf({ kind, channel, setUp, value }: Shown): string {
  return `${channel} ${setUp} ${kind === 'number' && typeof value === 'number' ? 'number' : value}`;
}
