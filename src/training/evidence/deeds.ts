import type { Action } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import type { SetUp } from './setUp.ts';

const PAPERWORK: ReadonlySet<SittingAction['kind']> = new Set([
  'accept-job',
  'log',
  'read-codes',
  'wait',
  'wait-steady',
  'annotate',
  'skip-step',
  'mark-item',
  'ask-coach',
  'give-verdict',
  'close-job',
]);

/** Whether an action is the bench's, and not the paperwork's: only these reach a world. */
export function isOfBench(action: SittingAction): action is Action {
  return !PAPERWORK.has(action.kind);
}

const WRITES_FINDING: ReadonlySet<SittingAction['kind']> = new Set(['look', 'listen', 'drag-test']);

/** Whether an action finds something by itself, which is written down at once. */
export function writesFinding(action: SittingAction): boolean {
  return WRITES_FINDING.has(action.kind);
}

/** The set-up of what an eye, an ear or a hand finds: what it hangs on beside the place. */
export function findingKey(action: SittingAction, { circuit, air }: SetUp, seen: Observation): string {
  if (action.kind === 'drag-test') return `drag ${action.cavity} ${seen.renewed.join('+')}`;
  if (action.kind !== 'look' && action.kind !== 'listen') return action.kind;
  return `${action.kind} ${action.at} ${action.kind === 'listen' ? `${circuit} ${air}` : seen.renewed.join('+')}`;
}
