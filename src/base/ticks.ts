/** Simulated time is an integer count of 50 µs ticks since the sitting began. */
export type Tick = number;

export const TICKS_PER_SECOND = 20_000;
export const SECONDS_PER_TICK = 1 / TICKS_PER_SECOND;

/** Whole ticks nearest to a time in seconds. */
export function secondsToTicks(seconds: number): Tick {
  return Math.floor(seconds * TICKS_PER_SECOND + 0.5);
}

/** Time in seconds of a tick count. */
export function ticksToSeconds(ticks: Tick): number {
  return ticks / TICKS_PER_SECOND;
}
