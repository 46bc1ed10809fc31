import { cavityOfBack } from '../../../sim/devices/places.ts';
import { type MethodRule, unlessBroken } from './RuleFinding.ts';

/**
 * The plug was measured from the wire side or with the kit's matched test pin, never with a bare tip pushed into a
 * terminal's face and never through the insulation.
 */
export const backProbedWithPins: MethodRule = ({ moments }) => {
  const placed = moments.flatMap(({ tick, action }) =>
    action?.kind === 'place-lead' ? [{ tick, point: action.point }] : [],
  );
  const proper = placed.filter(({ point }) => cavityOfBack(point) !== null || point.startsWith('harness-'));
  const harmed = placed.filter(({ point }) => point.startsWith('front-') || point.startsWith('wire-'));
  return unlessBroken(
    proper.map(({ tick }) => tick),
    harmed.map(({ tick }) => tick),
  );
};
