import type { Tick } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/** One piece of evidence: the observation of one moment, with what was heard in the ten seconds before it. */
export interface LogEntry {
  /** Counts up from 1. */
  readonly id: number;
  readonly tick: Tick;
  readonly seen: Observation;
  readonly heard: { readonly clicksOn: number; readonly clicksOff: number };
  /** Highest and lowest gauge reading in the ten seconds before, kPa vacuum. */
  readonly gaugeSwing: { readonly lowKPa: number; readonly highKPa: number };
  readonly note: string;
}
