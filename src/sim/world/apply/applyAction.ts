import { unreachable } from '../../../base/assert.ts';
import type { Action } from '../Action.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { commandSolenoid } from './commandSolenoid.ts';
import { clamp, putOn, takeOff } from './fittings.ts';
import { moveHandle, release, stroke } from './handPump.ts';
import { renewJumperFuse, switchJumper } from './jumper.ts';
import { liftLead, placeLead } from './leads.ts';
import { insertPin, removePin } from './pins.ts';
import { matePlug, partPlug } from './plug.ts';
import { renew } from './renew.ts';
import { setKey } from './setKey.ts';
import { setMeter } from './setMeter.ts';
import { fitFuse, pullFuse } from './truckFuse.ts';

/** The table from action to the small file that does it. */
export function applyAction(context: ApplyContext, action: Action): Applied {
  switch (action.kind) {
    case 'set-key':
      return setKey(context, action.position);
    case 'set-meter':
      return setMeter(context, action.function);
    case 'place-lead':
      return placeLead(context, action.end, action.point);
    case 'lift-lead':
      return liftLead(context, action.end);
    case 'insert-pin':
      return insertPin(context, action.cavity);
    case 'remove-pin':
      return removePin(context, action.cavity);
    case 'part-plug':
      return partPlug(context);
    case 'mate-plug':
      return matePlug(context);
    case 'switch-jumper':
      return switchJumper(context, action.on);
    case 'renew-jumper-fuse':
      return renewJumperFuse(context);
    case 'pull-fuse':
      return pullFuse(context);
    case 'fit-fuse':
      return fitFuse(context);
    case 'fit':
      return putOn(context, action.item, action.site);
    case 'take-off':
      return takeOff(context, action.item);
    case 'clamp':
      return clamp(context, action.port, action.setting);
    case 'pump-handle':
      return moveHandle(context, action.position);
    case 'stroke':
      return stroke(context, action.depth);
    case 'release':
      return release(context, action.open);
    case 'command-solenoid':
      return commandSolenoid(context, action.command);
    case 'renew':
      return renew(context, action.item);
    default:
      return unreachable(action);
  }
}
