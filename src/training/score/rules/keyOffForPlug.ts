import { type MethodRule, unlessBroken } from './RuleFinding.ts';

/** The key was off whenever the plug was parted or mated, by hand or to fit a new unit or plug. */
export const keyOffForPlug: MethodRule = ({ moments }) => {
  const handled = moments.filter(
    ({ action }) =>
      action?.kind === 'part-plug' ||
      action?.kind === 'mate-plug' ||
      (action?.kind === 'renew' && (action.item === 'unit' || action.item === 'plug')),
  );
  const live = handled.filter(({ seen }) => seen.key !== 'off');
  return unlessBroken(
    handled.map(({ tick }) => tick),
    live.map(({ tick }) => tick),
  );
};
