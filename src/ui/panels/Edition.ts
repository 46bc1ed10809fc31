import type { ReadonlySignal } from '@preact/signals';

/** A newer version of the program, and how far it has come. */
export type NewerVersion =
  /** It is on the device and waits for the user's word. */
  | 'offered'
  /** Asked for, but a job is open in another page of this browser. */
  | 'job-elsewhere'
  /** Asked for: what is open is being saved and the versions change places. */
  | 'taking'
  /** Another page has put it in; this page is still the older one. */
  | 'taken-elsewhere';

/** The program itself as this device keeps it. */
export interface Edition {
  /** Whether the program works without the network from now on. Unknown as long as it is being fetched, and where no browser could. */
  readonly kept: ReadonlySignal<'unknown' | 'kept' | 'not-kept'>;
  readonly newer: ReadonlySignal<NewerVersion | null>;
  /** Puts the newer version in, or loads the page again where another page has done so. */
  takeNewer(): void;
}
