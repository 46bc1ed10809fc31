import type { SittingAction } from '../training/sitting/SittingAction.ts';

/** What one line of an action file asks for. */
export type ScriptStep =
  /** One action; then the hand needs `handSeconds` before the next. */
  | { readonly kind: 'act'; readonly action: SittingAction; readonly handSeconds: number }
  /** Logs, and writes the note on the new entry. */
  | { readonly kind: 'log'; readonly note: string }
  /** Strokes one after the other, each waited for. */
  | { readonly kind: 'strokes'; readonly depth: number; readonly times: number };

export interface ScriptLine {
  /** Counting from 1. */
  readonly line: number;
  readonly text: string;
  readonly step: ScriptStep;
}

/** What is wrong with a line of an action file. */
export interface ScriptProblem {
  readonly line: number;
  readonly code: 'unknown-verb' | 'unknown-word' | 'bad-number' | 'wrong-shape' | 'open-quote' | 'too-large';
  /** The word found; for `wrong-shape` the verb. */
  readonly found: string;
  /** Words or range that would do there; for `wrong-shape` how the line should look. */
  readonly allowed: string;
}
