import type { VerdictItem } from '../training/sitting/SittingAction.ts';
import { has, say } from './translate.ts';

/** What is thought to be wrong with an item, in trade words; null is 'I cannot say'. */
export function describeMode(item: VerdictItem, mode: string | null): string {
  if (mode === null) return say('verdict.cannotSay');
  const key = `itemModes.${item}.${mode}`;
  // A record of another version may hold a mode that this one has no words for.
  return has(key) ? say(key) : mode;
}
