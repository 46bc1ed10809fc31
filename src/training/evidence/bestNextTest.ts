import { Posterior } from './Posterior.ts';
import { entropyOf, type Rivals, rivalsOf } from './rivals.ts';
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

/** Less than this is not worth a hand's turn. */
export const LEAST_BITS = 0.004;
/** No test is cheaper than this, minutes: what looks free would be chosen for nothing. */
export const LEAST_MINUTES = 0.5;

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
