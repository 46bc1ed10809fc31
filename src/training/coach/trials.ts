import type { BenchSurface } from '../../sim/devices/BenchSurface.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import type { Hands } from './Hands.ts';

/** Tests that try one thing several times over, since it may come and go. */
export const TRIED_TESTS = [
  'command-clicks',
  'jumper-clicks',
  'vacuum-and-sense',
  'wiggle-sense',
  'wiggle-feed',
  'wiggle-ground',
] as const;
export type TriedTest = (typeof TRIED_TESTS)[number];

/** How many trials each makes when it is done by its sheet. */
export const TRIALS_ON_SHEET: Readonly<Record<TriedTest, number>> = {
  'command-clicks': 3,
  'jumper-clicks': 9,
  'vacuum-and-sense': 7,
  'wiggle-sense': 4,
  'wiggle-feed': 4,
  'wiggle-ground': 4,
};

/** Whether an action begins one more trial; `before` and `after` are the hands before and after it. */
export function isTrialOf(
  test: TriedTest,
  action: SittingAction,
  before: Hands,
  after: Hands,
  { switchPort }: BenchSurface,
): boolean {
  if (after.unit !== 'truck') return false;
  switch (test) {
    case 'command-clicks':
      return action.kind === 'command-solenoid' && action.command === 'on' && after.mated;
    case 'jumper-clicks':
      return action.kind === 'switch-jumper' && action.on && after.leads['jumper-far'] === 'unit-1';
    case 'vacuum-and-sense':
      return (
        action.kind === 'stroke' &&
        before.strokes === 0 &&
        after.sites[switchPort] === 'pump-hose' &&
        after.mated &&
        after.key !== 'off'
      );
    case 'wiggle-sense':
      return action.kind === 'wiggle' && meterOn(after, '3');
    case 'wiggle-feed':
      return action.kind === 'wiggle' && meterOn(after, '1') && after.command === 'on';
    case 'wiggle-ground':
      return action.kind === 'wiggle' && meterOn(after, '2') && after.command === 'on';
  }
}

function meterOn({ leads, mated, key }: Hands, cavity: '1' | '2' | '3'): boolean {
  const point = `cavity-${cavity}-back`;
  return mated && key !== 'off' && [leads['meter-red'], leads['meter-black']].some((at) => at === point);
}
