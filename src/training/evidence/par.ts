import type { StandardTest, TestTool } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { bestNextTest, isProven } from './bestNextTest.ts';
import type { Shown } from './Shown.ts';
import type { TestEvidence } from './TestEvidence.ts';

/** What proves a tool before it is trusted. */
const PROOFS: Readonly<Partial<Record<TestTool, readonly StandardTestId[]>>> = {
  meter: ['meter-on-battery', 'meter-leads-together'],
  'hand-pump': ['hand-pump-dead-end'],
  jumper: ['jumper-proof'],
};

/** The plan of the best next test from the complaint to the proof, on one truth. */
export interface Plan {
  /** Tests in the order done, tool proofs among them. */
  readonly tests: readonly string[];
  readonly minutes: number;
  readonly money: number;
  /** False where no test was left before anything stood proven. */
  readonly proven: boolean;
  /** Chances of the suspects at the end. */
  readonly chances: readonly number[];
}

const MOST_TESTS = 30;

/**
 * Follows the best next test to the goal. `show` does a test on the true bench; `minutes` are the book's by test of the
 * table. A tool is proven before its first use.
 */
export function planOf(
  prior: readonly number[],
  evidence: TestEvidence,
  tests: readonly StandardTest[],
  minutes: readonly number[],
  show: (test: StandardTest) => readonly Shown[],
): Plan {
  const plan: string[] = [];
  const done = new Set<number>();
  let chances = prior;
  let spent = 0;
  let money = 0;
  const work = (number: number): void => {
    const test = tests[number];
    if (test === undefined || done.has(number)) return;
    for (const tool of test.needs) {
      for (const proof of PROOFS[tool] ?? []) {
        const at = tests.findIndex(({ id }) => id === proof);
        if (at >= 0 && at !== number && !isProofOf(test, tool)) work(at);
      }
    }
    done.add(number);
    plan.push(test.id);
    spent += minutes[number] ?? 0;
    money += test.money;
    chances = evidence.updated(chances, number, show(test));
  };
  while (!isProven(evidence.suspects, chances) && plan.length < MOST_TESTS) {
    const next = bestNextTest(chances, evidence, minutes, done);
    if (next === null) break;
    work(next.test);
  }
  return { tests: plan, minutes: spent, money, proven: isProven(evidence.suspects, chances), chances };
}

function isProofOf({ id }: StandardTest, tool: TestTool): boolean {
  return (PROOFS[tool] ?? []).includes(id);
}
