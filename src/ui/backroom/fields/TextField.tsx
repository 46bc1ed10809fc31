import { say } from '../../../text/translate.ts';
import type { DraftText } from '../../../training/draft/DraftText.ts';
import type { FormEdit } from '../../../training/draft/FormEdit.ts';
import type { FieldLimits } from '../../../training/draft/fieldLimits.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, rawText, schemaPathOf } from '../../../training/draft/rawText.ts';
import { slugOf } from '../../../training/draft/slugOf.ts';
import { textIn, writtenIn } from '../../../training/draft/textIn.ts';
import { JOB_LANGUAGES, type JobLanguage } from '../../../training/scenario/jobTexts.ts';
import type { DraftBook } from '../DraftBook.ts';
import { fieldId } from '../fieldWords.ts';
import { useTyped } from '../useTyped.ts';
import { describedBy, Field, type FieldProps, Problems } from './Field.tsx';
import { NotShown } from './NotShown.tsx';

/** The letters that are left are told from here on. */
const FEW_LEFT = 30;

interface TextFieldProps extends FieldProps {
  readonly long: boolean;
  /** Of an entry of a list: it goes by its number, without a label of its own that is seen. */
  readonly bare?: string;
}

/** A text of one line, or of several; in two languages where the form asks for both. */
export function TextField(props: TextFieldProps) {
  const { book, path, bare } = props;
  const limits = fieldLimits(schemaPathOf(path));
  const { form } = book.draft.value;
  const raw = form.at(pathOf(path));
  const several = limits?.languages === true && (book.bothLanguages.value || raw.kind === 'group');
  const body = several ? (
    <div class="field-languages">
      {JOB_LANGUAGES.map((language) => (
        <InLanguage key={language} {...props} language={language} />
      ))}
    </div>
  ) : (
    <OneText {...props} />
  );
  if (bare !== undefined) return body;
  return (
    <Field book={book} path={path} group={several} aside={several ? undefined : left(rawText(raw), limits)}>
      {body}
    </Field>
  );
}

function OneText({ book, path, long, bare }: TextFieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  const limits = fieldLimits(schemaPathOf(path));
  if (raw.kind === 'unreadable' || raw.kind === 'group' || raw.kind === 'list') {
    return <NotShown book={book} path={path} />;
  }
  const write = (value: string): void => {
    const gone = value === '' && limits?.optional === true;
    const edit: FormEdit = gone
      ? { kind: 'remove', path: pathOf(path) }
      : { kind: 'set', path: pathOf(path), value };
    const name = path === 'title' ? nameAfter(value, book.now()) : [];
    book.edit([edit, ...name], { kind: 'changed', path }, 'writing');
  };
  return (
    <Control
      book={book}
      id={fieldId(path)}
      long={long}
      text={rawText(raw)}
      onWrite={write}
      onLeave={() => book.pause()}
      {...(bare === undefined ? {} : { label: bare })}
      {...describedBy(book, path)}
    />
  );
}

/** What the text is in one language. A plain text stands for all of them, and is the first one's until another is written. */
function InLanguage({
  book,
  path,
  long,
  bare,
  language,
}: TextFieldProps & { readonly language: JobLanguage }) {
  const { form } = book.draft.value;
  const place = pathOf(path);
  const raw = form.at(place);
  if (raw.kind === 'unreadable' || raw.kind === 'list') return <NotShown book={book} path={path} />;
  const text = textIn(form, place, language);
  const inPath = `${path}.${language}`;
  const name = say(`backRoom.languages.${language}`);
  const first = language === JOB_LANGUAGES[0];
  const write = (value: string): void => {
    const present = book.now();
    const named = path === 'title' && first ? nameAfter(value, present) : [];
    book.edit(
      [...writtenIn(present, place, language, value), ...named],
      { kind: 'changed', path },
      'writing',
    );
  };
  const id = first ? fieldId(path) : fieldId(inPath);
  return (
    <div class="field-language" lang={language}>
      <label for={`${id}-in`} class="language-name">
        {name}
      </label>
      <Control
        book={book}
        id={`${id}-in`}
        long={long}
        text={text}
        onWrite={write}
        onLeave={() => book.pause()}
        {...(bare === undefined ? {} : { label: `${bare}, ${name}` })}
        {...describedBy(book, raw.kind === 'group' ? inPath : path)}
      />
      {raw.kind === 'group' && <Problems book={book} path={inPath} />}
    </div>
  );
}

interface ControlProps {
  readonly book: DraftBook;
  readonly id: string;
  readonly long: boolean;
  readonly text: string;
  readonly label?: string;
  readonly onWrite: (text: string) => void;
  readonly onLeave: () => void;
}

function Control({ book, id, long, text, label, onWrite, onLeave, ...described }: ControlProps) {
  const [shown, setTyped] = useTyped(book, text);
  const shared = {
    id,
    value: shown,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) => {
      setTyped(event.currentTarget.value);
      onWrite(event.currentTarget.value);
    },
    onBlur: onLeave,
    spellcheck: long,
    autocomplete: 'off',
    ...(label === undefined ? {} : { 'aria-label': label }),
    ...described,
  } as const;
  return long ? <textarea {...shared} rows={rowsFor(shown)} /> : <input type="text" {...shared} />;
}

/** The file goes by the title until its author gives it a name of its own. */
function nameAfter(title: string, form: DraftText): FormEdit[] {
  const name = form.at(['id']);
  const before = slugOf(textIn(form, ['title'], JOB_LANGUAGES[0]));
  const follows = name.kind === 'nothing' || (name.kind === 'text' && name.text === before);
  return follows || name.kind === 'absent' ? [{ kind: 'set', path: ['id'], value: slugOf(title) }] : [];
}

function left(text: string, limits: FieldLimits | null): string | undefined {
  if (limits?.most == null || limits.most < 70 || text.length < limits.most - FEW_LEFT) return undefined;
  return say('backRoom.lettersOf', { letters: text.length, most: limits.most });
}

/** As many lines as the text will take in a narrow column, two at least. */
function rowsFor(text: string): number {
  const lines = text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 40)), 0);
  return Math.min(Math.max(lines, 2), 24);
}
