import { type Tick, ticksToSeconds } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';

interface Change {
  readonly tick: Tick;
  /** The water's height then; null without water. */
  readonly kPa: number | null;
}

/** What must be remembered of a world between two looks: where the gauge stood as a hold began, and when and where its switch turned. */
export class Sight {
  private readonly gaugeAt = new Map<Tick, number>();
  private turned: Partial<Record<'open' | 'closed', Change>> = {};
  private state: 'open' | 'closed' | null = null;

  /** A hold begins. */
  mark(seen: Observation): void {
    this.gaugeAt.set(seen.tick, seen.gauge.needleKPa);
  }

  /** Vacuum lost since the mark at a tick, kPa; null where none was made. */
  lostSince(tick: Tick, seen: Observation): number | null {
    const then = this.gaugeAt.get(tick);
    return then === undefined ? null : then - seen.gauge.needleKPa;
  }

  /** Watches the sense circuit, beside the water where there is some. Returns the way it turned just now, or null. */
  watchSwitch(seen: Observation): 'open' | 'closed' | null {
    const now = seen.reader.senseState;
    if (now !== 'open' && now !== 'closed') return null;
    const before = this.state;
    this.state = now;
    if (before === null || before === now) return null;
    this.turned[now] = { tick: seen.tick, kPa: seen.manometer.kPa };
    return now;
  }

  /** The water's height as the switch last turned this way, kPa; null where it has not since a tick. */
  turnedAt(to: 'open' | 'closed', since: Tick): number | null {
    const change = this.turned[to];
    return change === undefined || change.tick < since ? null : change.kPa;
  }

  /** Seconds from a tick until the sense circuit turned this way; null where it has not since. */
  secondsTo(to: 'open' | 'closed', since: Tick): number | null {
    const change = this.turned[to];
    return change === undefined || change.tick < since ? null : ticksToSeconds(change.tick - since);
  }
}
