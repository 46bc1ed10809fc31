import { log2, normalised } from './information.ts';
import { Posterior } from './Posterior.ts';
import type { Suspect } from './Suspect.ts';
import type { TestEvidence } from './TestEvidence.ts';
import type { TestSheet } from './TestSheet.ts';
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
  const rivals = rivalsOf(chances, evidence.suspects);
  const before = entropyOf(rivals.prior, rivals);
  return evidence.table.tests.flatMap((_, test) => {
    if (done.has(test)) return [];
    const bits = before - entropyAfter(evidence.sheet(test), rivals);
    return [{ test, bits: Math.max(bits, 0), minutes: Math.max(minutes[test] ?? 0, LEAST_MINUTES) }];
  });
}

/** The suspects that are reckoned with: their numbers, chances that sum to 1, and the number of each one's mode group. */
interface Rivals {
  readonly suspects: readonly number[];
  readonly prior: Float64Array;
  readonly groupOf: readonly number[];
  /** Room for the sums by group, used again and again. */
  readonly sums: Float64Array;
}

function rivalsOf(chances: readonly number[], suspects: readonly Suspect[]): Rivals {
  const reckoned = likeliest(chances);
  const groupOf = numbered(reckoned.map((s) => (suspects[s] as Suspect).modeGroup));
  return {
    suspects: reckoned,
    prior: Float64Array.from(normalised(reckoned.map((s) => chances[s] ?? 0))),
    groupOf,
    sums: new Float64Array(Math.max(0, ...groupOf) + 1),
  };
}

/** Mean entropy left, over what the test would show if each rival in turn were the truth. */
function entropyAfter(sheet: TestSheet, rivals: Rivals): number {
  const { suspects, prior } = rivals;
  const shares = new Map<number, number>();
  for (const [i, truth] of suspects.entries()) {
    for (const { sample, share } of sheet.samplesOf(truth)) {
      shares.set(sample, (shares.get(sample) ?? 0) + share * (prior[i] ?? 0));
    }
  }
  const weights = new Float64Array(suspects.length);
  let bits = 0;
  for (const [sample, share] of shares) {
    for (const [j, s] of suspects.entries()) weights[j] = (prior[j] ?? 0) * sheet.sampleUnder(sample, s);
    bits += share * entropyOf(weights, rivals);
  }
  return bits;
}

/** Entropy over the mode groups of weights that need not sum to 1. */
function entropyOf(weights: Float64Array, { groupOf, sums }: Rivals): number {
  sums.fill(0);
  let total = 0;
  for (let j = 0; j < weights.length; j++) {
    const group = groupOf[j] as number;
    sums[group] = (sums[group] as number) + (weights[j] as number);
    total += weights[j] as number;
  }
  if (!(total > 0)) return 0;
  // H = log2 W - (sum of w log2 w) / W
  let weighted = 0;
  for (const sum of sums) if (sum > 0) weighted += sum * log2(sum);
  return log2(total) - weighted / total;
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
