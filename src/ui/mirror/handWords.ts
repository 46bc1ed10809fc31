import { describeSide } from '../../text/describePoint.ts';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { Grip, Target } from '../interaction/Grip.ts';

/** What is in the hand, by name. */
export function gripName(grip: Grip): string {
  switch (grip.kind) {
    case 'lead':
      return say(`ends.${grip.end}`);
    case 'fitting':
      return say(`fittings.${grip.item}`);
    case 'pin':
      return say('hand.pin');
    case 'drag-gauge':
      return say('inHand.dragGauge');
    case 'sense':
      return say(grip.how === 'look' ? 'inHand.eye' : 'inHand.ear');
  }
}

/** Where something may go, by name. */
export function placeName(target: Target, grip: Grip): string {
  switch (target.kind) {
    case 'point':
      return capital(describeSide(target.point));
    case 'site':
      return capital(say(`sites.${target.site}`));
    case 'cavity':
      return say(grip.kind === 'drag-gauge' ? 'inHand.terminal' : 'hand.cavity', { cavity: target.cavity });
    case 'place':
      return capital(say(`examined.${target.place}`));
    case 'mat':
      return say('hand.putBack');
  }
}

/** What the bench says while something is held. */
export function heldSentence(grip: Grip): string {
  switch (grip.kind) {
    case 'sense':
      return say(grip.how === 'look' ? 'inHand.look' : 'inHand.listen');
    case 'drag-gauge':
      return say('inHand.drag');
    case 'lead':
    case 'fitting':
      return say('hand.heldOverMat', { thing: capital(gripName(grip)) });
    default:
      return say('hand.held', { thing: capital(gripName(grip)) });
  }
}

/** The heading over the list of places. */
export function pickerTitle(grip: Grip): string {
  switch (grip.kind) {
    case 'sense':
      return say(grip.how === 'look' ? 'inHand.lookAt' : 'inHand.listenAt');
    case 'drag-gauge':
      return say('inHand.dragIn');
    default:
      return say('hand.placeOn', { thing: gripName(grip) });
  }
}
