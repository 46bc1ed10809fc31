import { useState } from 'preact/hooks';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, rawText, schemaPathOf, typedNumber } from '../../../training/draft/rawText.ts';
import { fieldId } from '../fieldWords.ts';
import { shownQuantity } from '../shownQuantity.ts';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { isShown, NotShown } from './NotShown.tsx';

/** A figure. It stands as it is typed until the hand leaves it. */
export function NumberField({ book, path }: FieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const raw = book.draft.value.form.at(pathOf(path));
  const optional = fieldLimits(schemaPathOf(path))?.optional === true;
  const write = (value: string): void => {
    setTyped(value);
    const place = pathOf(path);
    const number = typedNumber(value);
    book.edit(
      [
        value.trim() !== ''
          ? { kind: 'set', path: place, value: number ?? value }
          : optional
            ? { kind: 'remove', path: place }
            : { kind: 'set', path: place, value: null },
      ],
      { kind: 'changed', path },
    );
  };
  return (
    <Field
      book={book}
      path={path}
      aside={raw.kind === 'number' ? shownQuantity(path, raw.number) : undefined}
    >
      {isShown(raw) ? (
        <input
          type="text"
          inputMode="decimal"
          class="field-number"
          id={fieldId(path)}
          autocomplete="off"
          value={typed ?? rawText(raw)}
          onInput={(event) => write(event.currentTarget.value)}
          onBlur={() => {
            setTyped(null);
            book.pause();
          }}
          {...describedBy(book, path)}
        />
      ) : (
        <NotShown book={book} path={path} />
      )}
    </Field>
  );
}
