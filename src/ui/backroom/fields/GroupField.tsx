import type { Plain } from '../../../training/draft/FormEdit.ts';
import { fieldsBelow } from '../../../training/draft/formFields.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { fieldHint, fieldId, fieldLabel } from '../fieldWords.ts';
import { type FieldProps, Problems } from './Field.tsx';
import { NotShown } from './NotShown.tsx';
import { NumberField } from './NumberField.tsx';

interface GroupFieldProps extends FieldProps {
  /** What the group is when it is first wanted. */
  readonly fresh: Plain;
}

/** A group of figures that may be left out as a whole. */
export function GroupField({ book, path, fresh }: GroupFieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const there = raw.kind !== 'absent';
  const turn = (on: boolean): void => {
    const place = pathOf(path);
    book.edit([on ? { kind: 'set', path: place, value: fresh } : { kind: 'remove', path: place }], {
      kind: on ? 'added' : 'removed',
      path,
    });
  };
  const hint = fieldHint(path);
  return (
    <fieldset class="field field-group">
      <legend class="visually-hidden">{fieldLabel(path)}</legend>
      <label class="field-turn">
        <input
          type="checkbox"
          id={fieldId(path)}
          checked={there}
          onChange={(event) => turn(event.currentTarget.checked)}
        />
        <span>{fieldLabel(path)}</span>
      </label>
      {hint !== null && <p class="field-hint quiet">{hint}</p>}
      {raw.kind === 'group' && (
        <div class="field-row">
          {fieldsBelow(path).map((field) => (
            <NumberField key={field.path} book={book} path={field.path} />
          ))}
        </div>
      )}
      {there && raw.kind !== 'group' && <NotShown book={book} path={path} />}
      <Problems book={book} path={path} />
    </fieldset>
  );
}
