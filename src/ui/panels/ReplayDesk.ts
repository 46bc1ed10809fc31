import type { Tick } from '../../base/ticks.ts';
import type { InsideObservation, Observation } from '../../sim/world/Observation.ts';

/** The world of a sitting at one moment: what could be known, and what stood inside. */
export interface ReplayMoment {
  readonly tick: Tick;
  readonly observation: Observation;
  readonly inside: InsideObservation;
}

/** A finished sitting that can be seen again at any moment of it, to the last digit. */
export interface ReplayDesk {
  readonly endTick: Tick;
  /** The moment at `tick`, everything done that was done at it. Rejects when the replay cannot go on. */
  at(tick: Tick): Promise<ReplayMoment>;
}
