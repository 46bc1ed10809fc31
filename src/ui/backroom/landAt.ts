import type { Destination, Pane } from './DraftBook.ts';
import { fieldId } from './fieldWords.ts';
import { focusSoon } from './focusSoon.ts';
import { TEXT_ID } from './TextPane.tsx';

/** The pane in which a place is. */
export function paneOf(place: Destination): Pane {
  return place.kind === 'field' ? 'form' : 'text';
}

/** Gives a place the focus, once its pane is drawn. */
export function landAt(place: Destination): void {
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      if (place.kind === 'line') toLine(place.line, place.column);
      else toField(place.path);
    }),
  );
}

/** Unfolds what is still to be mended, and gives it the focus. */
export function landAtProblems(): void {
  const fold = document.querySelector<HTMLDetailsElement>('.problem-fold');
  if (fold !== null) fold.open = true;
  focusSoon('.problem-fold > summary');
}

/** The field itself, or the closest one around it that the form has. */
function toField(path: string): void {
  for (let at = path; at !== ''; at = at.replace(/(\.[^.[]*|\[\d+\]|^[^.[]*)$/, '')) {
    const found = document.getElementById(fieldId(at));
    if (found === null) continue;
    const fold = found.closest('details');
    if (fold !== null) fold.open = true;
    found.focus();
    found.scrollIntoView({ block: 'center' });
    return;
  }
}

function toLine(line: number, column: number): void {
  const area = document.getElementById(TEXT_ID);
  if (!(area instanceof HTMLTextAreaElement)) return;
  let at = 0;
  for (let passed = 1; passed < line; passed++) {
    const end = area.value.indexOf('\n', at);
    if (end < 0) break;
    at = end + 1;
  }
  area.focus({ preventScroll: true });
  area.setSelectionRange(at + column - 1, at + column - 1);
  document.querySelectorAll('.text-line')[line - 1]?.scrollIntoView({ block: 'center' });
}
