import { useState } from 'preact/hooks';
import { CONDITION_FIELDS } from '../../../text/scenarioConditions.ts';
import { say } from '../../../text/translate.ts';
import { conditionText, readCondition } from '../../../training/draft/conditionText.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { fieldId } from '../fieldWords.ts';
import { describedBy, Field, type FieldProps } from './Field.tsx';
import { ListField } from './ListField.tsx';
import { TextField } from './TextField.tsx';

/** The steps of a job that leads by the hand. A job that does not has none, and is not asked for any. */
export function StepsField({ book, path }: FieldProps) {
  return (
    <ListField
      book={book}
      path={path}
      fresh={{ id: '', say: '', how: '', done: { key: 'on' } }}
      heading={(number) => say('backRoom.step', { number })}
      entry={(place) => (
        <>
          <TextField book={book} path={`${place}.id`} long={false} />
          <TextField book={book} path={`${place}.say`} long />
          <TextField book={book} path={`${place}.how`} long />
          <Condition book={book} path={`${place}.done`} />
        </>
      )}
    />
  );
}

/** When a step is done: keys of the format, one a line. What cannot be read yet stays here until it can. */
function Condition({ book, path }: FieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const value = book.draft.value.form.plainAt(pathOf(path));
  const text = typed ?? conditionText(value);
  const write = (next: string): void => {
    setTyped(next);
    const read = readCondition(next);
    if (read !== null)
      book.edit([{ kind: 'set', path: pathOf(path), value: read }], { kind: 'changed', path });
  };
  const unread = typed !== null && readCondition(typed) === null;
  return (
    <Field book={book} path={path}>
      <textarea
        id={fieldId(path)}
        class="draft-code"
        rows={Math.max(2, text.split('\n').length)}
        value={text}
        spellcheck={false}
        onInput={(event) => write(event.currentTarget.value)}
        onBlur={() => {
          if (!unread) setTyped(null);
          book.pause();
        }}
        {...describedBy(book, path)}
      />
      {unread && <p class="field-problem">{say('backRoom.conditionUnread')}</p>}
      <select
        class="add"
        aria-label={say('backRoom.askFor')}
        value=""
        onChange={(event) => {
          const { example } = CONDITION_FIELDS[event.currentTarget.value] ?? {};
          event.currentTarget.value = '';
          if (example !== undefined) write(`${text.trimEnd()}${text.trim() === '' ? '' : '\n'}${example}\n`);
        }}
      >
        <option value="">{say('backRoom.askFor')}</option>
        {Object.entries(CONDITION_FIELDS)
          .filter(([, { example }]) => example !== undefined)
          .map(([key, { example }]) => (
            <option key={key} value={key}>
              {example}
            </option>
          ))}
      </select>
    </Field>
  );
}
