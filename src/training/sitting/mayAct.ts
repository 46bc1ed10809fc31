import { type BenchTool, TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { Action } from '../../sim/world/Action.ts';
import { areAtHand, type ToolsAtHand, toolsOfAction } from '../scenario/benchTools.ts';
import { isJob } from '../scenario/modes.ts';
import type { LogEntry } from './LogEntry.ts';
import type { SittingAction, SittingRefusal } from './SittingAction.ts';
import type { SittingMode, SittingPhase } from './SittingView.ts';

export const MAX_CITATIONS = 8;
export const MAX_NOTE_CHARS = 280;

/** What belongs to finding out what is wrong, and to mending it. */
const OF_A_JOB: ReadonlySet<SittingAction['kind']> = new Set<SittingAction['kind']>([
  'give-verdict',
  'mark-item',
  'ask-coach',
  'renew',
  'road-test',
]);

/** Why the paperwork does not allow an action now, or null when it does. What the bench allows is the world's affair. */
export function paperworkRefusal(
  action: SittingAction,
  phase: SittingPhase,
  log: readonly LogEntry[],
  mode: SittingMode,
  tools?: ToolsAtHand,
): SittingRefusal | null {
  if (phase === 'closed') return 'job-is-closed';
  if (action.kind === 'accept-job') return phase === 'work-order' ? null : 'job-already-accepted';
  if (phase === 'work-order') return 'job-not-accepted';
  if (!areAtHand(tools, toolsFor(action))) return 'tool-not-at-hand';
  if (!isJob(mode) && OF_A_JOB.has(action.kind)) return 'not-in-introduction';
  switch (action.kind) {
    case 'give-verdict':
      if (phase !== 'bench') return 'verdict-already-given';
      if (action.cites.length > MAX_CITATIONS) return 'too-many-citations';
      return action.cites.every((id) => log.some((entry) => entry.id === id)) ? null : 'no-such-entry';
    case 'mark-item':
      if (phase !== 'bench') return 'verdict-already-given';
      if (action.cites.length > MAX_CITATIONS) return 'too-many-citations';
      return action.cites.every((id) => log.some((entry) => entry.id === id)) ? null : 'no-such-entry';
    case 'ask-coach':
      return mode === 'assessment' ? 'coach-is-off' : null;
    case 'annotate':
      if (action.text.length > MAX_NOTE_CHARS) return 'text-too-long';
      return log.some((entry) => entry.id === action.entry) ? null : 'no-such-entry';
    case 'close-job':
      return phase === 'repair' || !isJob(mode) ? null : 'verdict-needed-first';
    case 'renew':
      // A tool that is in doubt may be replaced at any time; a part of the truck only on a stated verdict.
      return phase === 'repair' || TOOL_ITEMS.includes(action.item) ? null : 'verdict-needed-first';
    default:
      return null;
  }
}

/** What an action takes into the hand. Paperwork is done with a pen, but codes are read through the reader. */
function toolsFor(action: SittingAction): readonly BenchTool[] {
  if (action.kind === 'read-codes') return ['reader'];
  return toolsOfAction(action as Action);
}
