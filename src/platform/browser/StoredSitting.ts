/**
 * A sitting as the browser keeps it. `record` is the sitting's own record (scenario id, content hash, seed, timed actions) as plain
 * JSON and nothing else; it is read back through the record's own parser, never trusted.
 */
export interface StoredSitting {
  /** One sitting: the scenario's id for the open one, with a time behind it once it is put away. */
  readonly key: string;
  readonly scenario: string;
  readonly state: 'open' | 'finished' | 'put-away';
  readonly record: unknown;
  /** Wall-clock time of the save, milliseconds since 1970, for the list of finished jobs. */
  readonly savedAtMs: number;
  /** Sitting time of the save, for the job board. */
  readonly tick: number;
  /** Points of a finished sitting; null before. */
  readonly score: number | null;
  /** What a finished sitting was worth, so that its debrief need not be worked out again to be read. */
  readonly facts?: KeptFacts | null;
}

/** Facts behind a curtain: what they were worked out from, the sum of their text, and the text. */
export interface KeptFacts {
  readonly mark: string;
  readonly sum: string;
  readonly bytes: Uint8Array;
}

/** Why nothing can be kept. Each has a sentence in `text` under `troubles`. */
export type StoreTrouble = 'store-blocked' | 'store-full' | 'store-failed' | 'store-newer';

/** A place that keeps things by their keys. Every call may reject; the caller says so and goes on in memory. */
export interface Store<T extends { readonly key: string }> {
  get(key: string): Promise<T | undefined>;
  put(thing: T): Promise<void>;
  remove(key: string): Promise<void>;
  list(): Promise<readonly T[]>;
}

export type SittingStore = Store<StoredSitting>;
