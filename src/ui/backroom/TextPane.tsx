import { useLayoutEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { linesOf } from '../../training/draft/sections.ts';
import { isStillToWrite } from '../../training/draft/stillToWrite.ts';
import type { DraftBook } from './DraftBook.ts';

/** Name of the text's control, to which one goes. */
export const TEXT_ID = 'draft-text';

/** The text as it is, with its lines numbered and those marked that something is wrong with. */
export function TextPane({ book }: { readonly book: DraftBook }) {
  const text = book.text.value;
  const area = useRef<HTMLTextAreaElement>(null);
  useCaretThatStays(area, text);
  const { problems, form } = book.draft.value;
  const wrong = new Set(problems.filter((each) => !isStillToWrite(each, form)).map(({ line }) => line));
  const toWrite = new Set(problems.map(({ line }) => line));
  return (
    <div class="text-edit">
      <div class="text-lines draft-code" aria-hidden="true">
        {[...linesOf(text), ...(text === '' || text.endsWith('\n') ? [''] : [])].map((line, i) => (
          <div
            key={i}
            class={
              wrong.has(i + 1)
                ? 'text-line text-wrong'
                : toWrite.has(i + 1)
                  ? 'text-line text-to-write'
                  : 'text-line'
            }
          >
            {line.replace(/\r?\n$/, '') || '\u200b'}
          </div>
        ))}
      </div>
      <textarea
        id={TEXT_ID}
        ref={area}
        class="draft-code"
        aria-label={say('backRoom.text')}
        aria-describedby="draft-problems"
        spellcheck={false}
        autocomplete="off"
        autocapitalize="off"
        value={text}
        onInput={(event) => book.type(event.currentTarget.value)}
        onBlur={() => book.pause()}
      />
    </div>
  );
}

/** A text that was changed from elsewhere takes the caret to where it changed, not to its end. */
function useCaretThatStays(area: { readonly current: HTMLTextAreaElement | null }, text: string): void {
  const before = useRef(text);
  useLayoutEffect(() => {
    const element = area.current;
    const was = before.current;
    before.current = text;
    if (element === null || was === text || document.activeElement !== element) return;
    // What the hand typed has its caret already; where it was put to the end by a change, it is brought back.
    if (element.selectionStart !== text.length || text.startsWith(was)) return;
    const at = text.length - commonEnd(was, text);
    element.setSelectionRange(at, at);
  });
}

function commonEnd(one: string, other: string): number {
  let same = 0;
  while (same < one.length && same < other.length && one.at(-1 - same) === other.at(-1 - same)) same++;
  return same;
}
