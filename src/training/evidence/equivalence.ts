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

/** Whether some test, shown on either of two suspects, speaks for it against the other. */
export function canTellApart(evidence: TestEvidence, a: number, b: number): boolean {
  return evidence.table.tests.some(
    (_, test) => shift(evidence, test, a, b) > LEAST_SHIFT || shift(evidence, test, b, a) > LEAST_SHIFT,
  );
}

/** Mean shift of the log-odds for the truth against a rival, by one test. */
function shift(evidence: TestEvidence, test: number, truth: number, rival: number): number {
  let sum = 0;
  for (let draw = 0; draw < evidence.samplesEach; draw++) {
    const own = evidence.sample(test, truth, draw, truth);
    const other = evidence.sample(test, truth, draw, rival);
    if (own > 0) sum += other > 0 ? ln(own / other) : 10;
  }
  return sum / evidence.samplesEach;
}
