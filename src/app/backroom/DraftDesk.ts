import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { LatestSaver } from '../../platform/browser/LatestSaver.ts';
import { leaveNote } from '../../platform/browser/lastNote.ts';
import type { DraftStore, StoredDraft } from '../../platform/browser/StoredDraft.ts';
import type { StoreTrouble } from '../../platform/browser/StoredSitting.ts';
import { applyEdit } from '../../training/draft/applyEdit.ts';
import { type Draft, draftOf } from '../../training/draft/Draft.ts';
import { DraftHistory, type DraftStep } from '../../training/draft/DraftHistory.ts';
import { DraftText } from '../../training/draft/DraftText.ts';
import type { EditProblem, FormEdit } from '../../training/draft/FormEdit.ts';
import { hasLanguages, textIn } from '../../training/draft/textIn.ts';
import { JOB_LANGUAGES } from '../../training/scenario/jobTexts.ts';
import type { Destination, DraftBook, Keeping } from '../../ui/backroom/DraftBook.ts';

/** So long after the last letter the form follows the text. */
const FOLLOW_MS = 150;
/** After so long without a letter the next one begins a step of its own. */
const PAUSE_MS = 1200;

interface DraftDeskParts {
  readonly stored: StoredDraft;
  readonly store: DraftStore;
  /** What keeps the store from keeping. */
  readonly trouble: ReadonlySignal<StoreTrouble | null>;
  readonly nowMs: () => number;
  goTo(place: Destination): void;
  /** Something was written: what was told of an earlier step is over. */
  edited(): void;
  /** The form cannot make a change. */
  refused(problem: EditProblem): void;
}

/** One draft being written: its text, its form, its steps, and the keeping of all that. */
export class DraftDesk implements DraftBook {
  readonly text: Signal<string>;
  readonly draft: Signal<Draft>;
  readonly followed = signal(0);
  readonly undoNext = signal<DraftStep | null>(null);
  readonly redoNext = signal<DraftStep | null>(null);
  readonly keeping: ReadonlySignal<Keeping>;
  readonly bothLanguages: Signal<boolean>;
  private readonly written = signal(true);
  private readonly history: DraftHistory;
  /** As it was last looked into: what has not changed since need not be read again. */
  private form: DraftText;
  private readonly saver: LatestSaver<StoredDraft>;
  private following: ReturnType<typeof setTimeout> | null = null;
  private pausing: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly parts: DraftDeskParts) {
    const { text } = parts.stored;
    this.text = signal(text);
    this.draft = signal(draftOf(text));
    this.bothLanguages = signal(hasLanguages(this.draft.peek().form));
    this.form = this.draft.peek().form;
    this.history = new DraftHistory(text);
    this.saver = new LatestSaver((state) => this.write(state));
    this.keeping = computed(() =>
      parts.trouble.value !== null ? 'not-kept' : this.written.value ? 'kept' : 'being-kept',
    );
  }

  now(): DraftText {
    this.form = new DraftText(this.history.text, this.form);
    return this.form;
  }

  type(text: string): void {
    this.parts.edited();
    this.history.change(text, { kind: 'typed', path: '' });
    this.renew('later');
  }

  edit(edits: readonly FormEdit[], step: DraftStep, writing?: 'writing'): EditProblem | null {
    let text = this.history.text;
    for (const edit of edits) {
      this.form = new DraftText(text, this.form);
      const done = applyEdit(this.form, edit);
      if (!done.ok) {
        this.parts.refused(done.error);
        return done.error;
      }
      text = done.value;
    }
    this.parts.edited();
    this.history.change(text, step);
    this.renew(writing === undefined ? 'now' : 'later');
    return null;
  }

  pause(): void {
    this.history.pause();
  }

  undo(): void {
    this.history.undo();
    this.renew('now');
  }

  redo(): void {
    this.history.redo();
    this.renew('now');
  }

  goTo(place: Destination): void {
    this.follow();
    this.parts.goTo(place);
  }

  /** The page is going: what the store has not got yet is left where it is kept at once. */
  leave(): void {
    if (this.written.peek()) return;
    leaveNote(this.parts.stored.key, { text: this.history.text, savedAtMs: this.parts.nowMs() });
  }

  /** Settles when all that was written is kept, or cannot be. */
  idle(): Promise<void> {
    return this.saver.idle();
  }

  end(): void {
    if (this.following !== null) clearTimeout(this.following);
    clearTimeout(this.pausing);
  }

  private renew(when: 'now' | 'later'): void {
    const { text } = this.history;
    this.text.value = text;
    this.undoNext.value = this.history.undoNext;
    this.redoNext.value = this.history.redoNext;
    if (this.following !== null) clearTimeout(this.following);
    if (when === 'now') this.follow();
    else this.following = setTimeout(() => this.follow(), FOLLOW_MS);
    clearTimeout(this.pausing);
    this.pausing = setTimeout(() => this.pause(), PAUSE_MS);
    this.save();
  }

  private follow(): void {
    if (this.following !== null) clearTimeout(this.following);
    this.following = null;
    this.followed.value += 1;
    this.draft.value = draftOf(this.history.text, this.draft.peek());
  }

  private save(): void {
    this.written.value = false;
    const { text } = this.history;
    this.saver.save({
      key: this.parts.stored.key,
      text,
      title: titleOf({ form: this.now() }),
      savedAtMs: this.parts.nowMs(),
    });
  }

  private async write(state: StoredDraft): Promise<void> {
    await this.parts.store.put(state);
    if (state.text === this.history.text) this.written.value = true;
  }
}

/** What a draft is called on the shelf. */
export function titleOf({ form }: Pick<Draft, 'form'>): string {
  return (
    JOB_LANGUAGES.map((language) => textIn(form, ['title'], language))
      .filter((title) => title !== '')[0]
      ?.slice(0, 80) ?? ''
  );
}
