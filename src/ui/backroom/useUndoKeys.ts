import type { Signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { DraftBook } from './DraftBook.ts';
import { stepName } from './stepName.ts';

/**
 * Undo and redo by their keys, wherever the focus is: the steps of form and text are one row, which a browser's own undo of each
 * control knows nothing of. Dialogs keep their own, and so does the bench.
 */
export function useUndoKeys(book: DraftBook, notice: Signal<string | null>): void {
  useEffect(() => {
    const isElsewhere = (target: EventTarget | null): boolean =>
      target instanceof Element && target.closest('dialog, .bench-pane') !== null;
    const onKeyDown = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || isElsewhere(event.target)) return;
      const key = event.key.toLowerCase();
      const which = key === 'z' ? (event.shiftKey ? 'redo' : 'undo') : key === 'y' ? 'redo' : null;
      if (which === null) return;
      event.preventDefault();
      event.stopPropagation();
      undoTold(book, notice, which);
    };
    const onBeforeInput = (event: InputEvent): void => {
      if (isElsewhere(event.target)) return;
      if (event.inputType !== 'historyUndo' && event.inputType !== 'historyRedo') return;
      event.preventDefault();
      undoTold(book, notice, event.inputType === 'historyUndo' ? 'undo' : 'redo');
    };
    // Ahead of the bench, which has an undo of its own.
    window.addEventListener('keydown', onKeyDown, true);
    window.addEventListener('beforeinput', onBeforeInput, true);
    return () => {
      window.removeEventListener('keydown', onKeyDown, true);
      window.removeEventListener('beforeinput', onBeforeInput, true);
    };
  }, [book, notice]);
}

/** Goes a step back or forth, and says which. */
export function undoTold(book: DraftBook, notice: Signal<string | null>, which: 'undo' | 'redo'): void {
  const step = (which === 'undo' ? book.undoNext : book.redoNext).peek();
  if (step === null) {
    if (which === 'undo') notice.value = say('backRoom.nothingToUndo');
    return;
  }
  if (which === 'undo') book.undo();
  else book.redo();
  notice.value = say(which === 'undo' ? 'backRoom.undone' : 'backRoom.redone', { step: stepName(step) });
}
