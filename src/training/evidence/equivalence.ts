import { ln } from '../../base/maths.ts';
import type { TestEvidence } from './TestEvidence.ts';

/** Two suspects are one where no test is expected to shift the odds between them by more than this, either way. */
const LEAST_SHIFT = ln(2);

/**
 * Suspects that no standard test tells apart: lists of their numbers, each suspect in one list, in order of their first
 * members. The relation is taken on to its end: what cannot be told from a member belongs to the group.
 */
export function equivalenceGroups(evidence: TestEvidence): readonly (readonly number[])[] {
  const groupOf = evidence.suspects.map((_, s) => s);
  const rootOf = (s: number): number => {
    let root = s;
    while (groupOf[root] !== root) root = groupOf[root] as number;
    return root;
  };
  for (let a = 0; a < groupOf.length; a++) {
    for (let b = a + 1; b < groupOf.length; b++) {
      const [one, other] = [rootOf(a), rootOf(b)];
      if (one !== other && !canTellApart(evidence, a, b))
        groupOf[Math.max(one, other)] = Math.min(one, other);
    }
  }
  const groups = new Map<number, number[]>();
  for (const s of groupOf.keys()) groups.set(rootOf(s), [...(groups.get(rootOf(s)) ?? []), s]);
  return [...groups.values()];
}

/** An item stands in another's group from this share of the other's weight on. */
const GROUP_SHARE = 0.5;

/**
 * For each item, the items that whoever names it cannot exclude, itself first; items that stand alone are left out. B
 * stands in A's group where for at least half of A's weight (degrees and modes of A alone, by the catalogue's weights) no
 * test of the table tells the suspect from some suspect of B alone. So one odd degree of A that hardly shows merges
 * nothing, and the relation is not taken on from member to member: it has a direction, and each group speaks of its own
 * item only. Nothing wrong counts as an item like the others.
 */
export function itemGroups(evidence: TestEvidence): Readonly<Record<string, readonly string[]>> {
  const ofItem = new Map<string, number[]>();
  for (const [s, { item, items }] of evidence.suspects.entries()) {
    if (items.length < 2) ofItem.set(item, [...(ofItem.get(item) ?? []), s]);
  }
  const groups: Record<string, readonly string[]> = {};
  for (const [item, own] of ofItem) {
    const others = [...ofItem].filter(
      ([other, theirs]) => other !== item && shareNotTold(evidence, own, theirs) >= GROUP_SHARE,
    );
    if (others.length > 0) groups[item] = [item, ...others.map(([other]) => other)];
  }
  return groups;
}

/** Share of the weight of some suspects that no test tells from one of the others. */
function shareNotTold(evidence: TestEvidence, own: readonly number[], others: readonly number[]): number {
  const weight = (of: readonly number[]): number =>
    of.reduce((sum, s) => sum + (evidence.suspects[s]?.weight ?? 0), 0);
  const notTold = own.filter((a) => others.some((b) => !canTellApart(evidence, a, b)));
  return weight(notTold) / Math.max(weight(own), 1e-12);
}

/** Whether some test, shown on either of two suspects, speaks for it against the other. */
export function canTellApart(evidence: TestEvidence, a: number, b: number): boolean {
  return evidence.table.tests.some(
    (_, test) => shift(evidence, test, a, b) > LEAST_SHIFT || shift(evidence, test, b, a) > LEAST_SHIFT,
  );
}

/** Ids of the tests that, shown on the first of two suspects, speak for it against the other. */
export function tellingTests(evidence: TestEvidence, truth: number, rival: number): readonly string[] {
  return evidence.table.tests.filter((_, test) => shift(evidence, test, truth, rival) > LEAST_SHIFT);
}

/** Mean shift of the log-odds for the truth against a rival, by one test. */
function shift(evidence: TestEvidence, test: number, truth: number, rival: number): number {
  const sheet = evidence.sheet(test);
  let sum = 0;
  for (const { sample, share } of sheet.samplesOf(truth)) {
    const own = sheet.sampleUnder(sample, truth);
    const other = sheet.sampleUnder(sample, rival);
    if (own > 0) sum += share * (other > 0 ? ln(own / other) : 10);
  }
  return sum;
}
