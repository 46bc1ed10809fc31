import type { BenchState } from '../devices/BenchState.ts';
import { cavityBack } from '../devices/places.ts';
import type { Action } from './Action.ts';
import type { HappeningPlace } from './Observation.ts';

/** The contact that an action makes or breaks on a bench that is still as it was before; null when it moves none. */
export function contactMoved(action: Action, before: BenchState): HappeningPlace | null {
  switch (action.kind) {
    case 'place-lead':
      // A tip that is moved on breaks its old contact first: that is where an arc may stand.
      return before.leads[action.end] ?? action.point;
    case 'lift-lead':
      return before.leads[action.end];
    case 'insert-pin':
    case 'remove-pin':
      return cavityBack(action.cavity);
    case 'part-plug':
    case 'mate-plug':
      return 'plug';
    case 'pull-fuse':
    case 'fit-fuse':
      return 'fuse';
    case 'switch-jumper':
      return 'jumper';
    case 'switch-supply':
      return 'supply-positive';
    default:
      return null;
  }
}
