import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { say } from '../../text/translate.ts';
import type { DraftBook } from './DraftBook.ts';
import { stepName } from './stepName.ts';
import { undoTold } from './useUndoKeys.ts';

interface DraftBarProps {
  readonly book: DraftBook;
  /** What was just done or refused. */
  readonly notice: Signal<string | null>;
  readonly onSave: () => void;
  readonly onShelf: () => void;
  /** Further ways to give the draft out. */
  readonly children?: ComponentChildren;
}

/** What can be done with the whole draft. */
export function DraftBar({ book, notice, onSave, onShelf, children }: DraftBarProps) {
  const undo = book.undoNext.value;
  const redo = book.redoNext.value;
  const keeping = book.keeping.value;
  return (
    <div class="draft-bar">
      <button type="button" onClick={onShelf}>
        {say('backRoom.toShelf')}
      </button>
      <span class="draft-steps">
        <button
          type="button"
          aria-disabled={undo === null}
          title={
            undo === null ? say('backRoom.nothingToUndo') : say('backRoom.undoStep', { step: stepName(undo) })
          }
          onClick={() => undoTold(book, notice, 'undo')}
        >
          {say('backRoom.undo')}
        </button>
        <button
          type="button"
          aria-disabled={redo === null}
          {...(redo === null ? {} : { title: say('backRoom.redoStep', { step: stepName(redo) }) })}
          onClick={() => undoTold(book, notice, 'redo')}
        >
          {say('backRoom.redo')}
        </button>
      </span>
      <p class="draft-told">
        <span class={`draft-keeping draft-${keeping}`}>
          {say(
            keeping === 'kept'
              ? 'backRoom.kept'
              : keeping === 'being-kept'
                ? 'backRoom.beingKept'
                : 'backRoom.notKept',
          )}
        </span>{' '}
        <span role="status">{notice.value}</span>
      </p>
      <span class="draft-out">
        <button type="button" onClick={onSave}>
          {say('backRoom.saveFile')}
        </button>
        {children}
      </span>
    </div>
  );
}
