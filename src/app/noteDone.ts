import { unreachable } from '../base/assert.ts';
import type { Refusal } from '../sim/world/Action.ts';
import type { Observation } from '../sim/world/Observation.ts';
import { describePuttingBack } from '../text/describeUndo.ts';
import { say } from '../text/translate.ts';
import type { SittingAction, SittingRefusal } from '../training/sitting/SittingAction.ts';
import type { UndoHistory, Undone } from '../ui/interaction/UndoHistory.ts';

/** Tells the history of the hand what was done: a job's paperwork stays done, and time that passed is none of it. */
export function noteDone(
  history: UndoHistory,
  action: SittingAction,
  before: Observation,
  after: Observation,
): void {
  switch (action.kind) {
    case 'log':
    case 'read-codes':
      return history.stays('seen-already');
    case 'give-verdict':
      return history.stays('verdict-given');
    case 'accept-job':
    case 'wait':
    case 'wait-steady':
    case 'annotate':
    case 'skip-step':
    case 'mark-item':
    case 'ask-coach':
    case 'close-job':
      return;
    default:
      history.note(action, before, after);
  }
}

/** What is said when something was put back, or could not be. */
export function undoneSentence(undone: Undone<Refusal | SittingRefusal>): string {
  switch (undone.kind) {
    case 'undone':
      return say('undo.done', { step: describePuttingBack(undone.actions) });
    case 'dropped': {
      const step = describePuttingBack(undone.actions);
      if (undone.why === null) return say('undo.moved', { step });
      return say('undo.refused', { step, reason: say(`refusals.${undone.why}`) });
    }
    case 'nothing':
      return say(`undo.reasons.${undone.why}`);
    default:
      return unreachable(undone);
  }
}
