import { useState } from 'preact/hooks';
import type { DraftBook } from './DraftBook.ts';

interface Typed {
  readonly text: string;
  /** How often the draft had followed the text by then. */
  readonly followed: number;
}

/**
 * What a control shows: what is being typed until the draft has followed, and after that as long as the draft means the same. The draft
 * follows a hand a moment later, so that writing never waits for it.
 */
export function useTyped(
  book: DraftBook,
  drafted: string,
  same: (typed: string, drafted: string) => boolean = (one, other) => one === other,
): readonly [string, (text: string) => void] {
  const [typed, setTyped] = useState<Typed | null>(null);
  const followed = book.followed.value;
  const stands = typed !== null && (typed.followed === followed || same(typed.text, drafted));
  return [stands ? typed.text : drafted, (text) => setTyped({ text, followed })];
}
