import { say } from '../../../text/translate.ts';
import { pathOf, rawText } from '../../../training/draft/rawText.ts';
import { SEED_POLICIES } from '../../../training/scenario/seedPolicy.ts';
import { fieldId } from '../fieldWords.ts';
import { useTyped } from '../useTyped.ts';
import { describedBy, Field, type FieldProps, Problems } from './Field.tsx';
import { NotShown } from './NotShown.tsx';

/** The word that draws the truck, and for whom it draws the same one; written plainly where that is as usual. */
export function SeedField({ book, path }: FieldProps) {
  const { form } = book.draft.value;
  const raw = form.at(pathOf(path));
  const long = raw.kind === 'group';
  const word = rawText(form.at(long ? [path, 'word'] : [path]));
  const [shown, setTyped] = useTyped(book, word);
  if (raw.kind === 'unreadable' || raw.kind === 'list') {
    return (
      <Field book={book} path={path}>
        <NotShown book={book} path={path} />
      </Field>
    );
  }
  const policy = long ? rawText(form.at([path, 'policy'])) : '';
  const write = (next: string): void => {
    setTyped(next);
    book.edit(
      [{ kind: 'set', path: long ? [path, 'word'] : [path], value: next }],
      { kind: 'changed', path },
      'writing',
    );
  };
  const choose = (next: string): void => {
    const value = next === '' ? shown : { word: shown, policy: next };
    book.edit([{ kind: 'set', path: [path], value }], { kind: 'changed', path: `${path}.policy` });
  };
  return (
    <Field book={book} path={path}>
      <input
        type="text"
        id={fieldId(path)}
        value={shown}
        autocomplete="off"
        spellcheck={false}
        onInput={(event) => write(event.currentTarget.value)}
        onBlur={() => book.pause()}
        {...describedBy(book, path)}
      />
      {long && <Problems book={book} path={`${path}.word`} />}
      <label class="field-below" for={fieldId(`${path}.policy`)}>
        {say('formFields.seed.policy.label')}
      </label>
      <select
        id={fieldId(`${path}.policy`)}
        value={policy}
        onChange={(event) => choose(event.currentTarget.value)}
        {...describedBy(book, `${path}.policy`)}
      >
        <option value="">{say('formOptions.seed.policy.usual')}</option>
        {policy !== '' && !(SEED_POLICIES as readonly string[]).includes(policy) && (
          <option value={policy}>{policy}</option>
        )}
        {SEED_POLICIES.map((each) => (
          <option key={each} value={each}>
            {say(`formOptions.seed.policy.${each}`)}
          </option>
        ))}
      </select>
      {long && <Problems book={book} path={`${path}.policy`} />}
    </Field>
  );
}
