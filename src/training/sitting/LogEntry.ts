import type { Tick } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/** Which instrument an entry is of. */
export type Headline = 'meter' | 'beside';

/**
 * What the entry was made for. `reading` entries are the learner's own; codes that were read, findings of eyes, ears and
 * hands, and drives write themselves down.
 */
export type EntrySubject = 'reading' | 'codes' | 'finding' | 'drive';

/** What fed the solenoid when it was last fed: the jumper at the parted unit, or the controller on command. */
export type ClickSource = 'jumper' | 'command';

/** One piece of evidence: the observation of one moment, with what was heard since the reading before it. */
export interface LogEntry {
  /** Counts up from 1. */
  readonly id: number;
  readonly tick: Tick;
  readonly about: EntrySubject;
  readonly seen: Observation;
  /** Clicks since the learner's reading before this one, ten seconds at most, and what fed the solenoid for them. */
  readonly heard: { readonly clicksOn: number; readonly clicksOff: number; readonly by: ClickSource | null };
  /** Whether the entry is first of all of the meter, or of what moved beside it (see `headlineOf`). */
  readonly headline: Headline;
  /** Highest and lowest gauge reading in the ten seconds before, kPa vacuum. */
  readonly gaugeSwing: { readonly lowKPa: number; readonly highKPa: number };
  readonly note: string;
}
