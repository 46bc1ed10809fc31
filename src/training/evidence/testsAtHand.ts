import { EVERY_RIG } from '../../sim/rigs/rigs.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { areAtHand, type ToolsAtHand } from '../scenario/benchTools.ts';
import type { EvidenceTables } from './EvidenceTables.ts';

/** Tests that cannot be done with what is at hand. */
export function testsNotAtHand(tools: ToolsAtHand): ReadonlySet<StandardTestId> {
  if (tools === undefined) return NONE;
  const tests = EVERY_RIG.flatMap((rig) => rig.tests);
  return new Set(tests.filter(({ needs }) => !areAtHand(tools, needs)).map(({ id }) => id));
}
const NONE: ReadonlySet<StandardTestId> = new Set();

/** The same by their numbers in the table, together with others. */
export function withoutToolsFor(
  { tests }: EvidenceTables,
  tools: ToolsAtHand,
  others: ReadonlySet<number>,
): ReadonlySet<number> {
  const barred = testsNotAtHand(tools);
  if (barred.size === 0) return others;
  return new Set([...others, ...tests.flatMap(({ id }, number) => (barred.has(id) ? [number] : []))]);
}
