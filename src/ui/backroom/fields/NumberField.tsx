import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, rawText, schemaPathOf, typedNumber } from '../../../training/draft/rawText.ts';
import { fieldId } from '../fieldWords.ts';
import { shownQuantity } from '../shownQuantity.ts';
import { useTyped } from '../useTyped.ts';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { isShown, NotShown } from './NotShown.tsx';

/** A figure. It stands as it is typed. */
export function NumberField({ book, path }: FieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const [shown, setTyped] = useTyped(book, rawText(raw), isSameFigure);
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
      'writing',
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
          value={shown}
          onInput={(event) => write(event.currentTarget.value)}
          onBlur={() => book.pause()}
          {...describedBy(book, path)}
        />
      ) : (
        <NotShown book={book} path={path} />
      )}
    </Field>
  );
}

/** `2.` is on the way to a figure, and is not to be tidied under the hand. */
function isSameFigure(typed: string, drafted: string): boolean {
  const figure = typedNumber(typed);
  return figure === null ? typed === drafted : figure === typedNumber(drafted);
}
