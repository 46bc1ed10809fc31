import { type MethodRule, unlessBroken } from './RuleFinding.ts';

/** The key was off whenever the plug was parted or mated. */
export const keyOffForPlug: MethodRule = ({ moments }) => {
  const handled = moments.filter(
    ({ action }) => action?.kind === 'part-plug' || action?.kind === 'mate-plug',
  );
  const live = handled.filter(({ seen }) => seen.key !== 'off');
  return unlessBroken(
    handled.map(({ tick }) => tick),
    live.map(({ tick }) => tick),
  );
};
