import { cavityOfBack } from '../../../sim/devices/places.ts';
import { type MethodRule, unlessBroken } from './RuleFinding.ts';

/** The plug's harness half was measured from the wire side, never with a tip pushed into a terminal's face. */
export const backProbedWithPins: MethodRule = ({ moments }) => {
  const placed = moments.flatMap(({ tick, action }) =>
    action?.kind === 'place-lead' && action.end.startsWith('meter-') ? [{ tick, point: action.point }] : [],
  );
  const proper = placed.filter(({ point }) => cavityOfBack(point) !== null);
  const front = placed.filter(({ point }) => point.startsWith('harness-'));
  return unlessBroken(
    proper.map(({ tick }) => tick),
    front.map(({ tick }) => tick),
  );
};
