import { TICKS_PER_SECOND, type Tick } from '../base/ticks.ts';
import type { Observation } from '../sim/world/Observation.ts';

/** More sitting time than this between two frames is a jump; of it so much is still heard. */
const JUMP_TICKS: Tick = TICKS_PER_SECOND;
const JUST_NOW_TICKS: Tick = TICKS_PER_SECOND / 4;

/**
 * What a listener hears of a frame. After a jump of the clock that is what happened in its last moment, not all of it at once.
 * `lastTick` is the tick of the frame before.
 */
export function justNow(seen: Observation, lastTick: Tick): Observation {
  if (seen.tick - lastTick <= JUMP_TICKS) return seen;
  return { ...seen, happenings: seen.happenings.filter(({ tick }) => seen.tick - tick < JUST_NOW_TICKS) };
}
