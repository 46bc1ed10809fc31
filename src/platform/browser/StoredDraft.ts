import { openTable } from './idbStore.ts';
import type { Store } from './StoredSitting.ts';

/** A scenario that is being written, as the browser keeps it: its text as it stands, whole or half done. */
export interface StoredDraft {
  readonly key: string;
  readonly text: string;
  /** What the text gives as its title when it was saved; empty where there is none. */
  readonly title: string;
  /** Wall-clock time of the save, milliseconds since 1970. */
  readonly savedAtMs: number;
}

export type DraftStore = Store<StoredDraft>;

/** Drafts lie apart from sittings: a browser on which nobody writes has no such database. */
export function openDraftTable(onLost: () => void): Promise<DraftStore> {
  return openTable<StoredDraft>('known-good-drafts', 'drafts', onLost);
}
