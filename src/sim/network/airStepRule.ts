import type { AirLayout, AirLevel } from './AirLayout.ts';
import { type AirScheme, FINE_ENOUGH_S } from './AirScheme.ts';
import type { AirState } from './AirState.ts';

export const SHORTEST_AIR_STEP_S = 50e-6;
export const LONGEST_AIR_STEP_S = 600;

/** How far a step may run past a level, Pa. */
const PAST_LEVEL_PA = 2;
/** Aimed at where a level is in the way, Pa past it. */
const AIM_PAST_PA = 1;
const MOST_TRIES = 60;

/** Grid and end of the steps a caller can take, and how it moves its pistons for a step of so many quanta. */
export interface StepWish {
  readonly quantumS: number;
  /** Whole quanta. */
  readonly longest: number;
  moveWalls(quanta: number): void;
}

/**
 * The number of quanta of the next step: as long as its local error and the bend between its ends stay within what
 * `AirScheme` allows, not more than 2 Pa past a level. An air that stands still takes the longest. The step is worked
 * out when this returns, unless it could not be. Depends on the state and the wish alone.
 */
export function airStep(layout: AirLayout, state: AirState, scheme: AirScheme, wish: StepWish): number {
  const { quantumS, longest } = wish;
  wish.moveWalls(longest);
  scheme.look();
  if (!scheme.wake()) {
    scheme.foresee(longest * quantumS);
    return longest;
  }
  const fine = Math.max(Math.floor(FINE_ENOUGH_S / quantumS), 1);
  state.triedAgain = false;
  let quanta = Math.min(Math.max(Math.floor(state.nextStep / quantumS), 1), longest);
  for (let attempt = 0; attempt < MOST_TRIES; attempt++) {
    const h = quanta * quantumS;
    wish.moveWalls(quanta);
    if (!scheme.foresee(h, true)) {
      if (quanta === 1) return 1;
      const least = quanta > fine ? fine : 1;
      quanta = Math.max(Math.min(Math.floor(quanta * scheme.shrink), quanta - 1), least);
      state.triedAgain = true;
      continue;
    }
    if (!scheme.euler && (scheme.error > 1 || scheme.bend > 1) && quanta > fine) {
      quanta = Math.max(Math.min(Math.floor(quanta * Math.min(scheme.growth, 0.5)), quanta - 1), fine);
      state.triedAgain = true;
      continue;
    }
    const share = shareToLevel(layout, state, scheme, quanta);
    if (share >= 1 || quanta === 1) return quanta;
    quanta = Math.max(Math.min(Math.floor(quanta * share) + 1, quanta - 1), 1);
  }
  return quanta;
}

/** The share of the step worked out at which it should end for a level's sake, 1 where none is in the way. */
function shareToLevel(layout: AirLayout, state: AirState, scheme: AirScheme, quanta: number): number {
  let share = 1;
  for (let i = 0; i < layout.levels.length; i++) {
    const level = layout.levels[i] as AirLevel;
    const past = scheme.pastLevel(level);
    const gap = Math.abs(level.pa - (state.p[level.node] as number));
    // A quantum less would not reach it.
    if (past <= Math.max(PAST_LEVEL_PA, (gap + past) / quanta)) continue;
    const behind = level.pa > (state.p[level.node] as number) ? AIM_PAST_PA : -AIM_PAST_PA;
    const curved = scheme.shareTo(level.node, level.pa + behind);
    share = Math.min(share, curved > 0 && curved < 1 ? curved : (gap + AIM_PAST_PA) / (gap + past));
  }
  return share;
}
