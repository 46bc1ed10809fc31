import type { AirLayout, AirLevel } from './AirLayout.ts';
import type { AirStage } from './AirStage.ts';
import type { AirState } from './AirState.ts';

export const SHORTEST_AIR_STEP_S = 50e-6;
export const LONGEST_AIR_STEP_S = 5;

const MOVE_PER_STEP_PA = 150;
const MOVE_PER_STEP_OF_AMBIENT = 0.01;
/** How far a step may run past a level, Pa. */
const PAST_LEVEL_PA = 2;

/**
 * A step in seconds in which no pressure is expected to move more than 150 Pa, or 1 % of its distance to ambient where
 * that is more, nor more than 2 Pa past a level; at most twice the last step, and within the shortest and longest. Depends on the state alone. The expected move
 * is that of one linearised backward Euler step, so a small volume behind a wide port does not hold the others up.
 */
export function airStep(layout: AirLayout, state: AirState, stage: AirStage): number {
  let h = Math.min(2 * state.lastStep, LONGEST_AIR_STEP_S);
  for (let attempt = 0; attempt < 20 && h > SHORTEST_AIR_STEP_S; attempt++) {
    const excess = expectedMove(layout, state, stage, h);
    if (excess <= 1) return h;
    h *= Math.max(0.1, Math.min(0.9, 0.9 / excess));
  }
  return Math.max(h, SHORTEST_AIR_STEP_S);
}

/** The largest expected move of a pressure in h seconds, as a multiple of what is allowed. */
function expectedMove(layout: AirLayout, state: AirState, stage: AirStage, h: number): number {
  stage.p.set(state.p);
  stage.known.set(state.mass);
  for (let row = 0; row < state.mass.length; row++) {
    const now = state.volumeNow[row] as number;
    stage.ownVolume[row] = Math.max(now + h * (state.sweepRate[row] as number), 0.1 * now);
  }
  if (!stage.predict(h)) return Number.POSITIVE_INFINITY;
  let excess = 0;
  for (let row = 0; row < state.mass.length; row++) {
    const pressure = state.p[layout.nodeOf[row] as number] as number;
    const distance = layout.ambient < 0 ? 0 : Math.abs(pressure - (state.p[layout.ambient] as number));
    const allowed = Math.max(MOVE_PER_STEP_PA, MOVE_PER_STEP_OF_AMBIENT * distance);
    excess = Math.max(excess, Math.abs(stage.delta[row] as number) / allowed);
  }
  for (let i = 0; i < layout.levels.length; i++) {
    const level = layout.levels[i] as AirLevel;
    const move = stage.delta[layout.rowOf[level.node] as number] as number;
    const gap = level.pa - (state.p[level.node] as number);
    if (move * gap > 0) excess = Math.max(excess, Math.abs(move) / (Math.abs(gap) + PAST_LEVEL_PA));
  }
  return excess;
}
