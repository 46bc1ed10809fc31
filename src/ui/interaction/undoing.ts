import { unreachable } from '../../base/assert.ts';
import type { LeadPoint, UnitPort } from '../../sim/devices/places.ts';
import { LEAD_ENDS, UNIT_PORTS } from '../../sim/devices/places.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { siteOf } from './Grip.ts';

/** Why a hand cannot put something back as it was. */
export const UNDO_REASONS = [
  'nothing-done',
  'loaded-again',
  'barb-cracked',
  'harms-again',
  'reading-let-go',
  'air-moved',
  'seen-already',
  'used-up',
  'codes-cleared',
  'verdict-given',
  'part-renewed',
  'driven',
] as const;
export type UndoReason = (typeof UNDO_REASONS)[number];

/** What a hand puts things back with: every action that moves or sets a thing, and breaks or uses up none. */
export type BackAction = Exclude<
  Action,
  {
    readonly kind:
      | 'pump-handle'
      | 'stroke'
      | 'release'
      | 'look'
      | 'listen'
      | 'drag-test'
      | 'wiggle'
      | 'renew-jumper-fuse'
      | 'refill-manometer'
      | 'clear-codes'
      | 'renew'
      | 'road-test';
  }
>;

/** What it takes to put an action back. */
export type Undoing =
  /** These actions, in this order, lay everything where it was. */
  | { readonly kind: 'put-back'; readonly actions: readonly BackAction[] }
  /** It stays done; what was done before it can still be put back. */
  | { readonly kind: 'stays'; readonly why: UndoReason }
  /** Nothing before it is put back either: the bench is another one since. */
  | { readonly kind: 'settles'; readonly why: 'part-renewed' | 'driven' };

function putBack(...actions: readonly BackAction[]): Undoing {
  return { kind: 'put-back', actions };
}

function stays(why: UndoReason): Undoing {
  return { kind: 'stays', why };
}

/**
 * The ordinary actions by which a hand would put back what `action` did to a bench that looked like `before`. No reading is ever
 * brought back, nothing is damaged once more, and no clamp is turned past hand tight.
 */
export function undoingOf(action: Action, before: Observation): Undoing {
  switch (action.kind) {
    case 'place-lead':
    case 'lift-lead': {
      const point = before.leads[action.end];
      if (point === null) return putBack({ kind: 'lift-lead', end: action.end });
      if (harms(point)) return stays('harms-again');
      return putBack({ kind: 'place-lead', end: action.end, point });
    }
    case 'insert-pin':
      return putBack({ kind: 'remove-pin', cavity: action.cavity });
    case 'remove-pin':
      return putBack({ kind: 'insert-pin', cavity: action.cavity });
    case 'part-plug':
      return putBack({ kind: 'mate-plug' });
    case 'mate-plug':
      return putBack({ kind: 'part-plug' });
    case 'fit':
    case 'take-off':
      return undoFitting(action, before);
    case 'clamp': {
      const setting = before.clamps[action.port];
      if (action.setting === 'over-tight' || setting === 'over-tight') return stays('barb-cracked');
      return putBack({ kind: 'clamp', port: action.port, setting });
    }
    case 'set-key':
      return putBack({ kind: 'set-key', position: before.key });
    case 'switch-jumper':
      return putBack({ kind: 'switch-jumper', on: before.jumper.switchedOn });
    case 'switch-supply':
      return putBack({ kind: 'switch-supply', on: before.supply.on });
    case 'pull-fuse':
      return putBack({ kind: 'fit-fuse' });
    case 'fit-fuse':
      return putBack({ kind: 'pull-fuse' });
    case 'set-bleed':
      return putBack({ kind: 'set-bleed', openness: before.bleed });
    case 'set-smoke':
      return putBack({
        kind: 'set-smoke',
        gas: before.smoke.gas,
        pa: Math.round(before.smoke.setKPa * 1000),
      });
    case 'command-solenoid':
      return putBack({ kind: 'command-solenoid', command: before.reader.command });
    case 'swap-unit':
      return undoSwap(before);
    case 'set-meter':
    case 'meter-jack':
    case 'meter-range':
    case 'meter-hold':
    case 'meter-extremes':
    case 'meter-relative':
      return undoMeter(action, before);
    case 'pump-handle':
    case 'stroke':
    case 'release':
      return stays('air-moved');
    case 'look':
    case 'listen':
    case 'drag-test':
    case 'wiggle':
      return stays('seen-already');
    case 'renew-jumper-fuse':
    case 'refill-manometer':
      return stays('used-up');
    case 'clear-codes':
      return stays('codes-cleared');
    case 'renew':
      return { kind: 'settles', why: 'part-renewed' };
    case 'road-test':
      return { kind: 'settles', why: 'driven' };
    default:
      return unreachable(action);
  }
}

/** A tip put here pierces a wire or spreads a terminal, a little more each time. */
function harms(point: LeadPoint): boolean {
  return point.startsWith('wire-') || point.startsWith('front-');
}

/** The fitting goes back to its site, and its clamp as tight as a hand would make it. */
function undoFitting({ item }: Extract<Action, { kind: 'fit' | 'take-off' }>, before: Observation): Undoing {
  const site = siteOf(item, before);
  if (site === null) return putBack({ kind: 'take-off', item });
  const port: UnitPort | undefined = UNIT_PORTS.find((name) => name === site);
  const tight = port !== undefined && before.clamps[port] !== 'loose';
  return putBack(
    { kind: 'fit', item, site },
    ...(tight ? [{ kind: 'clamp', port, setting: 'hand-tight' } as const] : []),
  );
}

/** Leads that were on the unit's terminals went to the mat with it. */
function undoSwap(before: Observation): Undoing {
  const tips = LEAD_ENDS.flatMap((end): BackAction[] => {
    const point = before.leads[end];
    return point?.startsWith('unit-') ? [{ kind: 'place-lead', end, point }] : [];
  });
  return putBack({ kind: 'swap-unit', to: before.unit }, ...tips);
}

/** Selector, jack and range are settings; a held, recorded or zeroed reading is gone once it is let go. */
function undoMeter(
  action: Extract<Action, { kind: 'set-meter' | `meter-${string}` }>,
  { meter }: Observation,
): Undoing {
  const range: BackAction = { kind: 'meter-range', range: meter.heldRange };
  switch (action.kind) {
    case 'set-meter': {
      const selector: BackAction = { kind: 'set-meter', function: meter.function };
      return meter.heldRange === null ? putBack(selector) : putBack(selector, range);
    }
    case 'meter-jack':
      return putBack({ kind: 'meter-jack', jack: meter.jack });
    case 'meter-range':
      return putBack(range);
    case 'meter-hold':
      return action.on ? putBack({ kind: 'meter-hold', on: false }) : stays('reading-let-go');
    case 'meter-relative':
      return action.on ? putBack({ kind: 'meter-relative', on: false }) : stays('reading-let-go');
    case 'meter-extremes':
      return action.show === 'off'
        ? stays('reading-let-go')
        : putBack({ kind: 'meter-extremes', show: meter.extremes });
    default:
      return unreachable(action);
  }
}
