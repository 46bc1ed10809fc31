import type { Observation } from '../../sim/world/Observation.ts';
import { type ToolsAtHand, toolsAway } from '../scenario/benchTools.ts';

/** How a bench is seen that has these tools alone. The same object again for the same moment. */
export function benchWith(tools: ToolsAtHand): (seen: Observation) => Observation {
  if (tools === undefined) return (seen) => seen;
  const away = toolsAway(tools);
  let last: { readonly of: Observation; readonly seen: Observation } | null = null;
  return (of) => {
    if (last?.of !== of) last = { of, seen: { ...of, away } };
    return last.seen;
  };
}
