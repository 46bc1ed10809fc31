import type { Tick } from '../../../base/ticks.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';

type Mark = DebriefFacts['marks'][number];

/** Ticks at which something was done or written, in order, each once. */
export function replayStops(marks: readonly Mark[], log: readonly LogEntry[]): readonly Tick[] {
  const ticks = new Set([...marks.map(({ tick }) => tick), ...log.map(({ tick }) => tick)]);
  return [...ticks].sort((a, b) => a - b);
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
