import { unreachable } from '../base/assert.ts';
import type { SittingAction } from '../training/sitting/SittingAction.ts';
import { describeSide } from './describePoint.ts';
import { fixed, inchesOfWater } from './format.ts';
import { say, type TextValues } from './translate.ts';

/** A short phrase for what was done: `red lead on cavity 3 wire side`. */
export function describeAction(action: SittingAction): string {
  return say(`actions.${action.kind}`, gaps(action));
}

/** What fills the gaps of a phrase about this action. */
export function gaps(action: SittingAction): TextValues {
  switch (action.kind) {
    case 'mark-item':
      return { item: say(`items.${action.item}`), mark: say(`boardMarks.${action.mark}`) };
    case 'ask-coach':
      return { depth: say(`coachDepths.${action.depth}`) };
    case 'set-key':
      return { position: say(`key.${action.position}`) };
    case 'set-meter':
      return { function: say(`meterFunctions.${action.function}`) };
    case 'meter-jack':
      return { jack: say(`meterJacks.${action.jack}`) };
    case 'meter-extremes':
      return { show: say(`extremes.${action.show}`) };
    case 'meter-hold':
    case 'meter-relative':
    case 'switch-supply':
      return { state: say(action.on ? 'onOff.on' : 'onOff.off') };
    case 'set-bleed':
      return { percent: fixed(action.openness * 100, 0) };
    case 'set-smoke':
      return {
        gas: say(`smokeGases.${action.gas}`),
        kPa: fixed(action.pa / 1000, 1),
        inches: inchesOfWater(action.pa / 1000),
      };
    case 'swap-unit':
      return { unit: say(`units.${action.to}`) };
    case 'look':
    case 'listen':
      return { place: say(`examined.${action.at}`) };
    case 'wiggle':
      return { place: say(`wigglePlaces.${action.at}`) };
    case 'road-test':
      return { cycles: action.cycles };
    case 'wait':
      return { seconds: fixed(action.seconds, action.seconds % 1 === 0 ? 0 : 1) };
    case 'place-lead':
      return { end: say(`ends.${action.end}`), point: describeSide(action.point) };
    case 'lift-lead':
      return { end: say(`ends.${action.end}`) };
    case 'insert-pin':
    case 'remove-pin':
    case 'drag-test':
      return { cavity: action.cavity };
    case 'switch-jumper':
      return { state: say(action.on ? 'onOff.on' : 'onOff.off') };
    case 'fit':
      return { item: say(`fittings.${action.item}`), site: say(`sites.${action.site}`) };
    case 'take-off':
      return { item: say(`fittings.${action.item}`) };
    case 'clamp':
      return { port: say(`sites.${action.port}`), setting: say(`clamps.${action.setting}`) };
    case 'release':
      return { state: say(action.open ? 'onOff.open' : 'onOff.shut') };
    case 'command-solenoid':
      return { command: say(`solenoid.${action.command}`) };
    case 'renew':
      return { item: say(`items.${action.item}`) };
    case 'annotate':
      return { entry: action.entry };
    case 'meter-range':
    case 'refill-manometer':
    case 'clear-codes':
    case 'read-codes':
    case 'wait-steady':
    case 'skip-step':
    case 'part-plug':
    case 'mate-plug':
    case 'renew-jumper-fuse':
    case 'pull-fuse':
    case 'fit-fuse':
    case 'pump-handle':
    case 'stroke':
    case 'accept-job':
    case 'log':
    case 'give-verdict':
    case 'close-job':
      return {};
    default:
      return unreachable(action);
  }
}
