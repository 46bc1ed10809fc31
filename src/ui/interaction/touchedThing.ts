import { unreachable } from '../../base/assert.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { siteOf } from './Grip.ts';

/** The one thing an action moves or sets: its name, and how it stands on a bench. */
export interface TouchedThing {
  readonly name: string;
  stands(seen: Observation): string | number | boolean | null;
}

/** What an action touches; null for what leaves nothing standing another way that a hand could turn back. */
export function touchedBy(action: Action): TouchedThing | null {
  switch (action.kind) {
    case 'place-lead':
    case 'lift-lead':
      return { name: `lead ${action.end}`, stands: ({ leads }) => leads[action.end] };
    case 'insert-pin':
    case 'remove-pin':
      return { name: `pin ${action.cavity}`, stands: ({ plug }) => plug.pins[action.cavity - 1] ?? false };
    case 'part-plug':
    case 'mate-plug':
      return { name: 'plug', stands: ({ plug }) => plug.mated };
    case 'fit':
    case 'take-off':
      return { name: `fitting ${action.item}`, stands: (seen) => siteOf(action.item, seen) };
    case 'clamp':
      return { name: `clamp ${action.port}`, stands: ({ clamps }) => clamps[action.port] };
    case 'set-key':
      return { name: 'key', stands: ({ key }) => key };
    case 'switch-jumper':
      return { name: 'jumper', stands: ({ jumper }) => jumper.switchedOn };
    case 'switch-supply':
      return { name: 'supply', stands: ({ supply }) => supply.on };
    case 'pull-fuse':
    case 'fit-fuse':
      return { name: 'fuse', stands: ({ fuse }) => fuse.fitted };
    case 'set-bleed':
      return { name: 'bleed', stands: ({ bleed }) => bleed };
    case 'set-smoke':
      return { name: 'smoke', stands: ({ smoke }) => `${smoke.gas} ${smoke.setKPa}` };
    case 'command-solenoid':
      return { name: 'command', stands: ({ reader }) => reader.command };
    case 'swap-unit':
      return { name: 'unit', stands: ({ unit }) => unit };
    case 'set-meter':
      return { name: 'meter function', stands: ({ meter }) => meter.function };
    case 'meter-jack':
      return { name: 'meter jack', stands: ({ meter }) => meter.jack };
    case 'meter-range':
      return { name: 'meter range', stands: ({ meter }) => meter.heldRange };
    case 'meter-hold':
      return { name: 'meter hold', stands: ({ meter }) => meter.hold };
    case 'meter-extremes':
      return { name: 'meter extremes', stands: ({ meter }) => meter.extremes };
    case 'meter-relative':
      return { name: 'meter relative', stands: ({ meter }) => meter.relative };
    case 'pump-handle':
    case 'stroke':
    case 'release':
    case 'look':
    case 'listen':
    case 'drag-test':
    case 'wiggle':
    case 'renew-jumper-fuse':
    case 'refill-manometer':
    case 'clear-codes':
    case 'renew':
    case 'road-test':
      return null;
    default:
      return unreachable(action);
  }
}
