import type { Action } from '../sim/world/Action.ts';
import { gaps } from './describeAction.ts';
import type { undo } from './en/undo.ts';
import { say } from './translate.ts';

/** Actions by which a hand puts something back. */
export type PuttingBack = Extract<Action, { readonly kind: keyof typeof undo.undo.steps }>;

/** A short phrase for putting something back: `red lead back on battery positive`. The first action names the thing. */
export function describePuttingBack([first]: readonly PuttingBack[]): string {
  return first === undefined ? '' : say(`undo.steps.${first.kind}`, gaps(first));
}
