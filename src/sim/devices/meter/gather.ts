import type { Tick } from '../../../base/ticks.ts';
import { secondsToTicks } from '../../../base/ticks.ts';
import type { MeterState } from './MeterState.ts';
import { rangesOf } from './ranges.ts';

/** Less than this sounds the tone. */
export const TONE_BELOW_OHMS = 20;
/** A touch too short to be read is still heard: the tone goes on for this long after it. */
const LATCH_TICKS: Tick = secondsToTicks(0.1);

/** Adds what stood at the jacks for some time to the window of integration. */
export function gather(state: MeterState, volts: number, seconds: number): void {
  const voltSeconds = volts * seconds;
  state.voltSeconds += voltSeconds;
  state.squareSeconds += volts * voltSeconds;
  state.seconds += seconds;
}

/**
 * Continuity listens at once, not four times a second: a comparator on the volts at the jacks. It hears whatever pulls
 * them below those of the tone's ohms, a live circuit's negative volts too.
 */
export function listen(state: MeterState, volts: number, tick: Tick): void {
  const closed = volts < TONE_VOLTS;
  if (state.closed && !closed) state.toneUntil = tick + LATCH_TICKS;
  state.closed = closed;
}

const TONE_VOLTS = toneVolts();

function toneVolts(): number {
  const range = rangesOf('continuity')[0];
  if (range === undefined) return 0;
  return (range.sourceVolts * TONE_BELOW_OHMS) / (range.sourceOhms + TONE_BELOW_OHMS);
}
