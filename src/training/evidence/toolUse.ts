import type { Action } from '../../sim/world/Action.ts';
import type { ScriptStep } from './watchShown.ts';

/** Whether a tool has been taken in hand by a script's actions. Until then its being bad would change nothing. */
export function usesTool(item: string, step: ScriptStep): boolean {
  if (step.kind !== 'act') return false;
  const { action } = step;
  switch (item) {
    case 'meter-leads':
    case 'meter-battery':
      return action.kind === 'set-meter' && action.function !== 'off';
    case 'meter-fuses':
      return action.kind === 'meter-jack';
    case 'hand-pump':
      return action.kind === 'stroke' || action.kind === 'pump-handle' || fitsPump(action);
    case 'jumper':
      return action.kind === 'place-lead' && action.end.startsWith('jumper-');
    default:
      return action.kind === 'place-lead';
  }
}

/** Its hose on something, or something on its hose: then its gauge is read. */
function fitsPump(action: Action): boolean {
  return action.kind === 'fit' && (action.item === 'pump-hose' || action.site === 'pump-hose-end');
}
