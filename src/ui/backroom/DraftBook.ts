import type { ReadonlySignal, Signal } from '@preact/signals';
import type { Draft } from '../../training/draft/Draft.ts';
import type { DraftStep } from '../../training/draft/DraftHistory.ts';
import type { DraftText } from '../../training/draft/DraftText.ts';
import type { EditProblem, FormEdit } from '../../training/draft/FormEdit.ts';

/** Where one can be in the back room. */
export type Pane = 'form' | 'text' | 'bench' | 'proof';

/** Whether what is written is kept in this browser. */
export type Keeping = 'kept' | 'being-kept' | 'not-kept';

/** A place to go to: a field of the form, or a place in the text. */
export type Destination =
  | { readonly kind: 'field'; readonly path: string }
  | { readonly kind: 'line'; readonly line: number; readonly column: number };

/** One open draft as its screens see it, and the ways to change it. */
export interface DraftBook {
  readonly text: ReadonlySignal<string>;
  /** Of the text, a moment after it was typed. */
  readonly draft: ReadonlySignal<Draft>;
  /** What the text has at this very moment, ahead of the draft while a hand is writing. */
  now(): DraftText;
  /** Counts up whenever the draft has followed the text. */
  readonly followed: ReadonlySignal<number>;
  readonly undoNext: ReadonlySignal<DraftStep | null>;
  readonly redoNext: ReadonlySignal<DraftStep | null>;
  readonly keeping: ReadonlySignal<Keeping>;
  /** Whether the form asks for each text in every language. */
  readonly bothLanguages: Signal<boolean>;
  /** The text as a hand leaves it. */
  type(text: string): void;
  /**
   * Changes of the form that make one step. All are done, or none. While a hand is `writing`, the draft follows a moment later, as it
   * does when the text is typed; the control shows what is written meanwhile.
   */
  edit(edits: readonly FormEdit[], step: DraftStep, writing?: 'writing'): EditProblem | null;
  /** A hand has left what it wrote in: what comes next is a step of its own. */
  pause(): void;
  undo(): void;
  redo(): void;
  goTo(place: Destination): void;
}
