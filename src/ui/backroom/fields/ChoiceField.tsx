import { say } from '../../../text/translate.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, rawText, schemaPathOf } from '../../../training/draft/rawText.ts';
import { fieldId, optionLabel } from '../fieldWords.ts';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { isShown, NotShown } from './NotShown.tsx';

/** One of a closed list. What the text has that is not in the list stands in it too, until another is chosen. */
export function ChoiceField({ book, path }: FieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const options = fieldLimits(schemaPathOf(path))?.options ?? [];
  const now = rawText(raw);
  const known = options.some((option) => String(option) === now);
  const choose = (value: string): void => {
    const option = options.find((each) => String(each) === value);
    if (option === undefined) return;
    book.edit([{ kind: 'set', path: pathOf(path), value: option }], { kind: 'changed', path });
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
