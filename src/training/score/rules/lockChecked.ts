import { kept, type MethodRule, missed, NO_OCCASION } from './RuleFinding.ts';

/** The plug, once it had been apart, was moved or looked at after it was last mated: a lock that did not catch shows only so. */
export const lockChecked: MethodRule = ({ moments }) => {
  const mated = moments.filter(({ action }) => action?.kind === 'mate-plug').at(-1);
  if (mated === undefined) return NO_OCCASION;
  const checked = moments.find(
    ({ tick, action, seen }) =>
      tick > mated.tick &&
      seen.plug.mated &&
      ((action?.kind === 'wiggle' && action.at === 'plug') ||
        (action?.kind === 'look' && action.at === 'plug')),
  );
  return checked === undefined ? missed([mated.tick]) : kept([checked.tick]);
};
