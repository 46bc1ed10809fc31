import { say } from '../../../text/translate.ts';
import type { FormEdit } from '../../../training/draft/FormEdit.ts';
import type { FieldLimits } from '../../../training/draft/fieldLimits.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, rawText, schemaPathOf } from '../../../training/draft/rawText.ts';
import { slugOf } from '../../../training/draft/slugOf.ts';
import type { DraftBook } from '../DraftBook.ts';
import { fieldId } from '../fieldWords.ts';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { isShown, NotShown } from './NotShown.tsx';

/** The letters that are left are told from here on. */
const FEW_LEFT = 60;

interface TextFieldProps extends FieldProps {
  readonly long: boolean;
  /** Of an entry of a list: it goes by its number, without a label of its own that is seen. */
  readonly bare?: string;
}

/** A text of one line, or of several. */
export function TextField({ book, path, long, bare }: TextFieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const limits = fieldLimits(schemaPathOf(path));
  const text = rawText(raw);
  const write = (value: string): void => {
    const gone = value === '' && limits?.optional === true;
    const edit: FormEdit = gone
      ? { kind: 'remove', path: pathOf(path) }
      : { kind: 'set', path: pathOf(path), value };
    book.edit([edit, ...(path === 'title' ? nameAfter(text, value, book) : [])], { kind: 'changed', path });
  };
  const shared = {
    id: fieldId(path),
    value: text,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) =>
      write(event.currentTarget.value),
    onBlur: () => book.pause(),
    spellcheck: long,
    autocomplete: 'off',
    ...(bare === undefined ? {} : { 'aria-label': bare }),
    ...describedBy(book, path),
  } as const;
  const control = !isShown(raw) ? (
    <NotShown book={book} path={path} />
  ) : long ? (
    <textarea {...shared} rows={rowsFor(text)} />
  ) : (
    <input type="text" {...shared} />
  );
  if (bare !== undefined) return control;
  return (
    <Field book={book} path={path} aside={left(text, limits)}>
      {control}
    </Field>
  );
}

/** The file goes by the title until its author gives it a name of its own. */
function nameAfter(before: string, title: string, book: DraftBook): FormEdit[] {
  const name = book.draft.peek().form.at(['id']);
  const follows = name.kind === 'nothing' || (name.kind === 'text' && name.text === slugOf(before));
  return follows || name.kind === 'absent' ? [{ kind: 'set', path: ['id'], value: slugOf(title) }] : [];
}

function left(text: string, limits: FieldLimits | null): string | undefined {
  if (limits?.most == null || text.length < limits.most - FEW_LEFT) return undefined;
  return say('backRoom.lettersOf', { letters: text.length, most: limits.most });
}

/** As many lines as the text will take in a narrow column, two at least. */
function rowsFor(text: string): number {
  const lines = text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 44)), 0);
  return Math.min(Math.max(lines, 2), 12);
}
