import { say } from '../../../text/translate.ts';
import type { Raw } from '../../../training/draft/DraftText.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { fieldId } from '../fieldWords.ts';
import type { FieldProps } from './Field.tsx';

/** Whether a single value can be shown, or the lack of one. */
export function isShown(raw: Raw): boolean {
  return raw.kind !== 'unreadable' && raw.kind !== 'group' && raw.kind !== 'list';
}

/** In the place of a control: the text there is of another shape. It stays as it is, and the way to it is given. */
export function NotShown({ book, path }: FieldProps) {
  return (
    <p class="field-not-shown" id={fieldId(path)} tabIndex={-1}>
      {say('backRoom.notShown')}{' '}
      <button
        type="button"
        class="plain"
        onClick={() =>
          book.goTo({ kind: 'line', line: book.draft.peek().form.lineOf(pathOf(path)), column: 1 })
        }
      >
        {say('backRoom.toText')}
      </button>
    </p>
  );
}
