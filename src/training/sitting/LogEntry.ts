import type { Tick } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/**
 * What the entry was made for. `reading` entries are the learner's own; codes that were read, findings of eyes, ears and
 * hands, and drives write themselves down.
 */
export type EntrySubject = 'reading' | 'codes' | 'finding' | 'drive';

/** One piece of evidence: the observation of one moment, with what was heard in the ten seconds before it. */
export interface LogEntry {
  /** Counts up from 1. */
  readonly id: number;
  readonly tick: Tick;
  readonly about: EntrySubject;
  readonly seen: Observation;
  readonly heard: { readonly clicksOn: number; readonly clicksOff: number };
  /** Highest and lowest gauge reading in the ten seconds before, kPa vacuum. */
  readonly gaugeSwing: { readonly lowKPa: number; readonly highKPa: number };
  readonly note: string;
}
