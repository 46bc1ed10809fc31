import type { HappeningKind } from '../sim/world/Observation.ts';

/** Within this time a kind is told so many times at most, seconds of real time. */
const SPAN_S = 3;
const MOST_TOLD = 2;

/**
 * Keeps a machine that clicks all the time from talking all the time: a kind that was told twice in a short while is silent until it
 * has been quiet for as long. A click that a hand asked for is always told: hands are slower than that.
 */
export class OftenHeard {
  private readonly heardAt = new Map<HappeningKind, readonly number[]>();

  /** Whether this is to be told, having just happened. Time is an argument, in seconds. */
  isNews(kind: HappeningKind, nowS: number): boolean {
    const before = (this.heardAt.get(kind) ?? []).filter((atS) => nowS - atS < SPAN_S);
    this.heardAt.set(kind, [...before, nowS]);
    return before.length < MOST_TOLD;
  }
}
