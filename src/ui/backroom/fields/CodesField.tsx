import { ChoiceField } from './ChoiceField.tsx';
import type { FieldProps } from './Field.tsx';
import { ListField } from './ListField.tsx';
import { TextField } from './TextField.tsx';

/** Codes on file, each with its status. */
export function CodesField({ book, path }: FieldProps) {
  return (
    <ListField
      book={book}
      path={path}
      fresh={{ code: '', status: 'stored' }}
      entry={(place) => (
        <div class="field-row">
          <TextField book={book} path={`${place}.code`} long={false} />
          <ChoiceField book={book} path={`${place}.status`} />
        </div>
      )}
    />
  );
}
