import { entropy, grouped, normalised } from './information.ts';
import { Posterior } from './Posterior.ts';
import type { Suspect } from './Suspect.ts';
import type { TestEvidence } from './TestEvidence.ts';
import type { ToolState } from './toolStates.ts';

/** A test worth doing next: its number in the table, the bits it is expected to tell, and its minutes. */
export interface NextTest {
  readonly test: number;
  readonly bits: number;
  readonly minutes: number;
}

/** Suspects below this share of the likeliest are left out of the reckoning. */
const SHARE_OF_LIKELIEST = 2e-3;
const MOST_RECKONED = 40;
/** Less than this is not worth a hand's turn. */
const LEAST_BITS = 0.004;
/** No test is cheaper than this, minutes: what looks free would be chosen for nothing. */
const LEAST_MINUTES = 0.5;

/**
 * The test that is expected to tell the most about item and mode group for its minutes, looking one step ahead; null where
 * none tells anything. `minutes` are the book's by test; `done` are tests whose repeat would tell nothing new.
 */
export function bestNextTest(
  chances: readonly number[],
  evidence: TestEvidence,
  minutes: readonly number[],
  done: ReadonlySet<number>,
): NextTest | null {
  let best: NextTest | null = null;
  for (const next of worthOfTests(chances, evidence, minutes, done)) {
    if (next.bits < LEAST_BITS) continue;
    if (best === null || next.bits * best.minutes > best.bits * next.minutes) best = next;
  }
  return best;
}

/** What each test not yet done is expected to tell, in the table's order. */
export function worthOfTests(
  chances: readonly number[],
  evidence: TestEvidence,
  minutes: readonly number[],
  done: ReadonlySet<number>,
): readonly NextTest[] {
  const reckoned = likeliest(chances);
  const prior = normalised(reckoned.map((s) => chances[s] ?? 0));
  const groupOf = numbered(reckoned.map((s) => (evidence.suspects[s] as Suspect).modeGroup));
  const before = entropy(grouped(prior, groupOf));
  return evidence.table.tests.flatMap((_, test) => {
    if (done.has(test)) return [];
    const bits = before - entropyAfter(evidence, test, reckoned, prior, groupOf);
    return [{ test, bits: Math.max(bits, 0), minutes: Math.max(minutes[test] ?? 0, LEAST_MINUTES) }];
  });
}

/** Mean entropy left, over what the test would show if each suspect in turn were the truth. */
function entropyAfter(
  evidence: TestEvidence,
  test: number,
  reckoned: readonly number[],
  prior: readonly number[],
  groupOf: readonly number[],
): number {
  let bits = 0;
  for (const [i, truth] of reckoned.entries()) {
    for (let draw = 0; draw < evidence.samplesEach; draw++) {
      const weights = reckoned.map((s, j) => (prior[j] ?? 0) * evidence.sample(test, truth, draw, s));
      bits += ((prior[i] ?? 0) / evidence.samplesEach) * entropy(grouped(normalised(weights), groupOf));
    }
  }
  return bits;
}

function likeliest(chances: readonly number[]): readonly number[] {
  const order = chances.map((_, s) => s).sort((a, b) => (chances[b] ?? 0) - (chances[a] ?? 0) || a - b);
  const top = chances[order[0] ?? 0] ?? 0;
  return order.slice(0, MOST_RECKONED).filter((s) => (chances[s] ?? 0) >= SHARE_OF_LIKELIEST * top);
}

/** Names as numbers from 0 in the order of their first coming. */
function numbered(names: readonly string[]): readonly number[] {
  const numbers = new Map<string, number>();
  return names.map((name) => {
    const number = numbers.get(name) ?? numbers.size;
    numbers.set(name, number);
    return number;
  });
}

/** Chance of an item, and of a mode group within it, at which nothing more needs proving. */
export const PROVEN_ITEM = 0.95;
export const PROVEN_MODE = 0.8;

const NO_TOOLS: readonly ToolState[] = [];

/** Whether an item stands proven: at 95 %, with its leading mode group at 80 % of it. */
export function isProven(suspects: readonly Suspect[], chances: readonly number[]): boolean {
  const posterior = new Posterior(suspects, NO_TOOLS, chances, []);
  const { chance, modeGroup } = posterior.leading();
  return chance >= PROVEN_ITEM && posterior.modeWithinItem(modeGroup) >= PROVEN_MODE;
}
