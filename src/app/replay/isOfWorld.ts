import type { Action } from '../../sim/world/Action.ts';
import type { SittingAction } from '../../training/sitting/SittingAction.ts';

type Paperwork = Exclude<SittingAction, Action>['kind'];

const PAPERWORK: Readonly<Record<Paperwork, true>> = {
  'accept-job': true,
  log: true,
  'read-codes': true,
  wait: true,
  'wait-steady': true,
  annotate: true,
  'skip-step': true,
  'mark-item': true,
  'ask-coach': true,
  'give-verdict': true,
  'close-job': true,
};

/** Whether an action moves the bench. The rest is paperwork and waiting, and waiting is in the ticks. */
export function isOfWorld(action: SittingAction): action is Action {
  return !(action.kind in PAPERWORK);
}
