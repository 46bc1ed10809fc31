import { unreachable } from '../../../base/assert.ts';
import type { Action } from '../Action.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { switchSupply } from './benchSupply.ts';
import { commandSolenoid } from './commandSolenoid.ts';
import { clearCodes, roadTest } from './controllerCodes.ts';
import { dragTest, listen, look } from './examine.ts';
import { clamp, putOn, takeOff } from './fittings.ts';
import { moveHandle, release, stroke } from './handPump.ts';
import { renewJumperFuse, switchJumper } from './jumper.ts';
import { liftLead, placeLead } from './leads.ts';
import { meterExtremes, meterHold, meterJack, meterRange, meterRelative } from './meterKeys.ts';
import { insertPin, removePin } from './pins.ts';
import { matePlug, partPlug } from './plug.ts';
import { renew } from './renew.ts';
import { setKey } from './setKey.ts';
import { setMeter } from './setMeter.ts';
import { setSmoke } from './smokeMachine.ts';
import { swapUnit } from './swapUnit.ts';
import { fitFuse, pullFuse } from './truckFuse.ts';
import { refillManometer, setBleed } from './waterManometer.ts';
import { wiggle } from './wiggle.ts';

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
    case 'meter-jack':
      return meterJack(context, action.jack);
    case 'meter-range':
      return meterRange(context, action.range);
    case 'meter-hold':
      return meterHold(context, action.on);
    case 'meter-extremes':
      return meterExtremes(context, action.show);
    case 'meter-relative':
      return meterRelative(context, action.on);
    case 'switch-supply':
      return switchSupply(context, action.on);
    case 'set-bleed':
      return setBleed(context, action.openness);
    case 'refill-manometer':
      return refillManometer(context);
    case 'set-smoke':
      return setSmoke(context, action.gas, action.pa);
    case 'swap-unit':
      return swapUnit(context, action.to);
    case 'drag-test':
      return dragTest(context, action.cavity);
    case 'look':
      return look(context, action.at);
    case 'listen':
      return listen(context, action.at);
    case 'wiggle':
      return wiggle(context, action.at);
    case 'clear-codes':
      return clearCodes(context);
    case 'road-test':
      return roadTest(context, action.cycles);
    case 'renew':
      return renew(context, action.item);
    default:
      return unreachable(action);
  }
}
