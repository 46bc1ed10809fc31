import { secondsToTicks, type Tick } from '../../../base/ticks.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';

type Mark = DebriefFacts['marks'][number];

/** So long after an action the circuits have settled and the display has read again: that is what the action did. */
const SETTLE_TICKS = secondsToTicks(0.3);

/**
 * Moments to stop at, in order: just after each thing done or written, when what it did is to be seen, but before the
 * next one.
 */
export function replayStops(
  marks: readonly Mark[],
  log: readonly LogEntry[],
  endTick: Tick,
): readonly Tick[] {
  const ticks = [...new Set([...marks.map(({ tick }) => tick), ...log.map(({ tick }) => tick)])].sort(
    (a, b) => a - b,
  );
  return ticks.map((tick, index) =>
    Math.min(tick + SETTLE_TICKS, Math.max(tick, (ticks[index + 1] ?? endTick + 1) - 1)),
  );
}

/** The stop of what was done at `tick`. */
export function stopOf(stops: readonly Tick[], tick: Tick): Tick {
  return stops.find((stop) => stop >= tick) ?? tick;
}

/** The stop after a moment, or the sitting's end. */
export function stopAfter(stops: readonly Tick[], tick: Tick, endTick: Tick): Tick {
  return stops.find((stop) => stop > tick) ?? endTick;
}

/** The stop before a moment, or the beginning. */
export function stopBefore(stops: readonly Tick[], tick: Tick): Tick {
  let before = 0;
  for (const stop of stops) if (stop < tick) before = stop;
  return before;
}

/** The last of a list not after a moment. */
export function lastAt<Timed extends { readonly tick: Tick }>(
  list: readonly Timed[],
  tick: Tick,
): Timed | undefined {
  let last: Timed | undefined;
  for (const each of list) if (each.tick <= tick) last = each;
  return last;
}
