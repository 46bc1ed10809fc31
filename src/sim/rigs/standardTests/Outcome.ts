import type { Tick } from '../../../base/ticks.ts';

/** Which sense or instrument an outcome came by. */
export type OutcomeChannel =
  | 'meter'
  | 'gauge'
  | 'manometer'
  | 'reader-volts'
  | 'reader-state'
  | 'reader-driver'
  | 'click'
  | 'tone'
  | 'lamp'
  | 'led'
  | 'smoke'
  | 'finding'
  | 'codes'
  | 'drive'
  | 'fuse';

interface Origin {
  readonly channel: OutcomeChannel;
  /** `test/mark`: outcomes of one set-up are repeats of one another. */
  readonly setUp: string;
  readonly tick: Tick;
}

/**
 * What was shown at one read mark. `half` is the half-width of the instrument's error in the number's own unit
 * (rectangular). A number of null is over range, or a goal that was not reached; 'unstable' did not settle.
 */
export type Outcome =
  | (Origin & {
      readonly kind: 'number';
      readonly value: number | null | 'unstable';
      readonly half: number;
      readonly unit: 'V' | 'Ω' | 'A' | 'kPa' | 's' | 'share' | 'count';
    })
  | (Origin & { readonly kind: 'yes-no'; readonly value: boolean })
  | (Origin & { readonly kind: 'word'; readonly value: string });
