import type { NextTest } from './bestNextTest.ts';
import type { Shown } from './Shown.ts';
import { shownTest } from './ShownTest.ts';
import type { TestEvidence } from './TestEvidence.ts';
import type { TestSheet } from './TestSheet.ts';

/**
 * An item is proven directly where one test showed what no other item alone would have shown. Several tests may leave an
 * item without any rival and yet none of them have been about it: that is elimination, and rests on the list being
 * complete. A careful hand ends with a test of the part itself, where there is one.
 */

/** So many times as likely under the item as under the likeliest suspect of any other. */
const DIRECT = 5;
/** A test is about an item directly where at least this share of what it may show there would be. */
const LEAST_SHARE = 0.5;
/** Suspects of the item below this chance do not count. */
const LEAST_CHANCE = 1e-3;

/** Whether some test that was done proves this item directly. `runs` holds what was shown by the test's number. */
export function isDirect(
  evidence: TestEvidence,
  chances: readonly number[],
  item: string,
  runs: ReadonlyMap<number, readonly Shown[]>,
): boolean {
  return [...runs].some(([test, shown]) => {
    const likelihoods = evidence.sheet(test).likelihoods(shownTest(shown));
    return speaksFor(evidence, chances, item, (s) => likelihoods[s] ?? 0);
  });
}

/** The test that proves an item directly in the fewest minutes by its chance of doing so; null where there is none. */
export function bestDirectTest(
  evidence: TestEvidence,
  chances: readonly number[],
  item: string,
  minutes: readonly number[],
  done: ReadonlySet<number>,
): NextTest | null {
  let best: (NextTest & { readonly share: number }) | null = null;
  for (const test of evidence.table.tests.keys()) {
    if (done.has(test)) continue;
    const share = directShare(evidence, evidence.sheet(test), chances, item);
    const takes = minutes[test] ?? 0;
    if (share < LEAST_SHARE) continue;
    if (best === null || share * best.minutes > best.share * takes)
      best = { test, bits: 0, minutes: takes, share };
  }
  return best;
}

/** Share of what a test may show on this item, its suspects weighed by their chances, that would prove it directly. */
function directShare(
  evidence: TestEvidence,
  sheet: TestSheet,
  chances: readonly number[],
  item: string,
): number {
  let [direct, all] = [0, 0];
  for (const [truth, suspect] of evidence.suspects.entries()) {
    const chance = chances[truth] ?? 0;
    if (suspect.item !== item || chance < LEAST_CHANCE) continue;
    all += chance;
    for (const { sample, share } of sheet.samplesOf(truth)) {
      const speaks = speaksFor(evidence, chances, item, (s) => sheet.sampleUnder(sample, s));
      if (speaks) direct += chance * share;
    }
  }
  return all > 0 ? direct / all : 0;
}

function speaksFor(
  { suspects }: TestEvidence,
  chances: readonly number[],
  item: string,
  likelihood: (suspect: number) => number,
): boolean {
  let [own, weight, rival] = [0, 0, 0];
  for (const [s, { item: its, items }] of suspects.entries()) {
    const chance = chances[s] ?? 0;
    if (its === item) {
      if (chance < LEAST_CHANCE) continue;
      own += chance * likelihood(s);
      weight += chance;
    } else if (items.length < 2) rival = Math.max(rival, likelihood(s));
  }
  return weight > 0 && own / weight >= DIRECT * rival;
}
