import type { Tick } from '../../base/ticks.ts';
import { secondsToTicks } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/** A hand that waits gives everything a second, and loses its patience after a minute. */
export const LEAST_STEADY_TICKS: Tick = secondsToTicks(1);
export const MOST_STEADY_TICKS: Tick = secondsToTicks(60);

/** Change of the test lamp's brightness between two looks that an eye does not notice. Common practice, no source. */
const GLOW_UNSEEN = 0.02;

/**
 * True when nothing that can be read moves any more: the meter's digits, the needle, the water column, the test lamp, the
 * hand pump and the harness. `earlier` is the look before this one.
 */
export function isSteady(seen: Observation, earlier: Observation): boolean {
  const { meter, gauge, manometer, testLamp, handPump } = seen;
  return (
    (meter.function === 'off' || meter.hold || meter.display.settled) &&
    gauge.steady &&
    manometer.steady &&
    Math.abs(testLamp.glow - earlier.testLamp.glow) < GLOW_UNSEEN &&
    !handPump.moving &&
    seen.wiggling === null
  );
}
