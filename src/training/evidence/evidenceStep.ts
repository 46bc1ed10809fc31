import type { Tick } from '../../base/ticks.ts';
import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import { truckItemsOf } from './chanceOf.ts';
import type { EvidenceStep } from './EvidenceFacts.ts';
import type { Posterior } from './Posterior.ts';

/** What everything shown had left after a log entry, or after the complaint (entry 0). */
export function evidenceStep(
  rig: RigDefinition,
  entry: number,
  tick: Tick,
  posterior: Posterior,
): EvidenceStep {
  return {
    entry,
    tick,
    items: truckItemsOf(rig).map((item) => ({ item, chance: posterior.ofItem(item) })),
    tools: TOOL_ITEMS.map((item) => ({ item, chance: posterior.ofTool(item) })),
  };
}
