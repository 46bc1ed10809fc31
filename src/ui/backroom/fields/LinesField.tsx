import { say } from '../../../text/translate.ts';
import type { FieldProps } from './Field.tsx';
import { ListField } from './ListField.tsx';
import { TextField } from './TextField.tsx';

/** Texts one under the other. */
export function LinesField({ book, path }: FieldProps) {
  return (
    <ListField
      book={book}
      path={path}
      fresh=""
      entry={(place, number) => (
        <TextField book={book} path={place} long bare={say('backRoom.entry', { number })} />
      )}
    />
  );
}
