import type { ToolsAtHand } from '../scenario/benchTools.ts';
import { bestNextTest, isProven } from './bestNextTest.ts';
import type { EvidenceFacts } from './EvidenceFacts.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { withoutToolsFor } from './testsAtHand.ts';
import { testsDone } from './testsDone.ts';
import type { Asked } from './watchShown.ts';

/** The test that would settle most, beside those effectively done; null where nothing is left to settle, or to do. */
export function settlingTest(
  tables: EvidenceTables,
  chances: readonly number[],
  asked: readonly Asked[],
  tools?: ToolsAtHand,
): EvidenceFacts['settling'] {
  const { suspects, evidence, minutes, tests } = tables;
  if (isProven(suspects, chances)) return null;
  const next = bestNextTest(
    chances,
    evidence,
    minutes,
    withoutToolsFor(tables, tools, testsDone(tables, asked)),
  );
  const test = next === null ? undefined : tests[next.test];
  if (next === null || test === undefined) return null;
  return { test: test.id, bits: next.bits, minutes: next.minutes };
}
