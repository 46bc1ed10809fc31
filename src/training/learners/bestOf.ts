import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { bestNextTest } from '../evidence/bestNextTest.ts';
import type { Technician } from './Technician.ts';

/** The test that tells most for its minutes among those not done yet, or among all; null where none tells anything. */
export function bestOf(
  { beliefs, bench: { tables, notAtHand }, done }: Technician,
  among: 'not-done' | 'all' = 'not-done',
): StandardTestId | null {
  const left = new Set(
    tables.tests.flatMap(({ id }, number) =>
      notAtHand.has(id) || (among === 'not-done' && done.has(id)) ? [number] : [],
    ),
  );
  const next = bestNextTest(beliefs.chances, tables.evidence, tables.minutes, left);
  return next === null ? null : (tables.tests[next.test]?.id ?? null);
}
