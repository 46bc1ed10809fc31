import { say } from '../../text/translate.ts';
import type { DraftStep } from '../../training/draft/DraftHistory.ts';
import { fieldLabel } from './fieldWords.ts';

/** What a step of the history did, in a few words. */
export function stepName({ kind, path }: DraftStep): string {
  return say(`backRoom.steps.${kind}`, { field: fieldLabel(path.replace(/\[\d+\]$/, '')) });
}
