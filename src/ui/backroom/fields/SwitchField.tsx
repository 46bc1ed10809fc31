import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, schemaPathOf } from '../../../training/draft/rawText.ts';
import { fieldHint, fieldId, fieldLabel } from '../fieldWords.ts';
import { describedBy, type FieldProps, Problems } from './Field.tsx';
import { isShown, NotShown } from './NotShown.tsx';

/** Yes or no. One that may be left out is left out where it is no. */
export function SwitchField({ book, path }: FieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const optional = fieldLimits(schemaPathOf(path))?.optional === true;
  const hint = fieldHint(path);
  const write = (on: boolean): void => {
    const place = pathOf(path);
    book.edit([on || !optional ? { kind: 'set', path: place, value: on } : { kind: 'remove', path: place }], {
      kind: 'changed',
      path,
    });
  };
  if (!isShown(raw)) return <NotShown book={book} path={path} />;
  return (
    <div class="field field-switch">
      <label>
        <input
          type="checkbox"
          id={fieldId(path)}
          checked={raw.kind === 'truth' && raw.truth}
          onChange={(event) => write(event.currentTarget.checked)}
          {...describedBy(book, path)}
        />
        <span>{fieldLabel(path)}</span>
      </label>
      {hint !== null && (
        <p class="field-hint quiet" id={`${fieldId(path)}-hint`}>
          {hint}
        </p>
      )}
      <Problems book={book} path={path} />
    </div>
  );
}
