import { say } from '../../../text/translate.ts';
import type { FormEdit } from '../../../training/draft/FormEdit.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, rawText, schemaPathOf } from '../../../training/draft/rawText.ts';
import { fieldId, optionLabel } from '../fieldWords.ts';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { isShown, NotShown } from './NotShown.tsx';

/** One of a closed list; of one that may be left out, the first is meant then. What the text has that is not in the list stands in it too, until another is chosen. */
export function ChoiceField({ book, path }: FieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const limits = fieldLimits(schemaPathOf(path));
  const options = limits?.options ?? [];
  const usual = limits?.optional === true ? options[0] : undefined;
  const now = raw.kind === 'absent' ? String(usual ?? '') : rawText(raw);
  const known = options.some((option) => String(option) === now);
  const choose = (value: string): void => {
    const option = options.find((each) => String(each) === value);
    if (option === undefined) return;
    const place = pathOf(path);
    const edit: FormEdit =
      option === usual ? { kind: 'remove', path: place } : { kind: 'set', path: place, value: option };
    book.edit([edit], { kind: 'changed', path });
  };
  return (
    <Field book={book} path={path}>
      {isShown(raw) ? (
        <select
          id={fieldId(path)}
          value={now}
          onChange={(event) => choose(event.currentTarget.value)}
          {...describedBy(book, path)}
        >
          {!known && <option value={now}>{now === '' ? say('backRoom.choose') : now}</option>}
          {options.map((option) => (
            <option key={option} value={String(option)}>
              {optionLabel(path, option)}
            </option>
          ))}
        </select>
      ) : (
        <NotShown book={book} path={path} />
      )}
    </Field>
  );
}
