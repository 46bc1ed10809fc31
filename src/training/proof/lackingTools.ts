import type { BenchTool } from '../../sim/devices/items.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { parOf } from '../evidence/parOf.ts';
import { isAtHand } from '../scenario/benchTools.ts';
import type { Scenario } from '../scenario/Scenario.ts';

/** What a job that its tools do not solve would be solved with: any one of these tools, or all of them. */
export interface LackingTools {
  readonly tools: readonly BenchTool[];
  readonly any: boolean;
}

/**
 * For a job whose plan ends in no proof: whether its tools are to blame, and which to add. Null where it cannot be solved with
 * everything either. A plan for each tool that the plan with everything takes and that is not at hand: some seconds.
 */
export function lackingTools(scenario: Scenario, tables: EvidenceTables): LackingTools | null {
  const { tools, ...whole } = scenario;
  if (tools === undefined) return null;
  const best = parOf(whole, tables);
  if (!best.proven) return null;
  const taken = new Set<BenchTool>(
    tables.rig.tests.filter(({ id }) => best.tests.includes(id)).flatMap(({ needs }) => needs),
  );
  const missing = [...taken].filter((tool) => !isAtHand(tools, tool));
  const enough = missing.filter((tool) => parOf({ ...scenario, tools: [...tools, tool] }, tables).proven);
  return enough.length > 0 ? { tools: enough, any: true } : { tools: missing, any: missing.length === 1 };
}
