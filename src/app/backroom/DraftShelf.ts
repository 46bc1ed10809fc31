import { type Signal, signal } from '@preact/signals';
import { type DraftStore, openDraftTable, type StoredDraft } from '../../platform/browser/StoredDraft.ts';
import type { StoreTrouble } from '../../platform/browser/StoredSitting.ts';
import { openSafeStore } from '../../platform/browser/safeStore.ts';

/** The drafts of this browser, as the shelf lists them. */
export interface DraftShelf {
  readonly store: DraftStore;
  readonly trouble: Signal<StoreTrouble | null>;
  readonly drafts: Signal<readonly StoredDraft[]>;
  /** Puts a text on the shelf as a draft of its own; gives its key. */
  add(text: string, title: string): Promise<string>;
  remove(key: string): Promise<void>;
  refresh(): Promise<void>;
}

let shelf: Promise<DraftShelf> | null = null;

/** One for the page: what cannot be kept on disk stays in it as long as the page lives. */
export function draftShelf(): Promise<DraftShelf> {
  shelf ??= openShelf();
  return shelf;
}

async function openShelf(): Promise<DraftShelf> {
  const trouble = signal<StoreTrouble | null>(null);
  const store = await openSafeStore<StoredDraft>(openDraftTable, (found) => {
    trouble.value = found;
  });
  const drafts = signal<readonly StoredDraft[]>([]);
  const refresh = async (): Promise<void> => {
    drafts.value = [...(await store.list())].sort((a, b) => b.savedAtMs - a.savedAtMs);
  };
  await refresh();
  return {
    store,
    trouble,
    drafts,
    refresh,
    add: async (text, title) => {
      const key = freshKey();
      await store.put({ key, text, title, savedAtMs: Date.now() });
      await refresh();
      return key;
    },
    remove: async (key) => {
      await store.remove(key);
      await refresh();
    },
  };
}

/** A name that no other draft has. */
function freshKey(): string {
  return [...crypto.getRandomValues(new Uint32Array(2))].map((word) => word.toString(36)).join('');
}
