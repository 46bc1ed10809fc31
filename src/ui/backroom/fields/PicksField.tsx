import { say } from '../../../text/translate.ts';
import type { FormEdit } from '../../../training/draft/FormEdit.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, schemaPathOf } from '../../../training/draft/rawText.ts';
import type { DraftBook } from '../DraftBook.ts';
import { fieldHint, fieldId, fieldLabel, optionLabel } from '../fieldWords.ts';
import { describedBy, Field, type FieldProps, Problems } from './Field.tsx';
import { NotShown } from './NotShown.tsx';

interface PicksFieldProps extends FieldProps {
  /** All are meant as long as the key is left out; else none. */
  readonly all: boolean;
}

/** Some of a closed list of words, each with a box to tick, behind a line that says how many are. */
export function PicksField({ book, path, all }: PicksFieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  if (raw.kind !== 'list' && raw.kind !== 'absent' && raw.kind !== 'nothing') {
    return (
      <Field book={book} path={path} group>
        <NotShown book={book} path={path} />
      </Field>
    );
  }
  const options = (fieldLimits(`${schemaPathOf(path)}[]`)?.options ?? []).map(String);
  const chosen = raw.kind === 'list' ? picked(book, path) : all ? options : [];
  const hint = fieldHint(path);
  return (
    <details class="picks-fold" id={fieldId(path)} tabIndex={-1}>
      <summary>
        {fieldLabel(path)}
        <span class="field-aside quiet">
          {say('backRoom.picked', { chosen: chosen.length, all: options.length })}
        </span>
      </summary>
      <fieldset class="field-group" {...describedBy(book, path)}>
        <legend class="visually-hidden">{fieldLabel(path)}</legend>
        {hint !== null && (
          <p class="field-hint quiet" id={`${fieldId(path)}-hint`}>
            {hint}
          </p>
        )}
        <ul class="picks">
          {options.map((option) => (
            <li key={option}>
              <label>
                <input
                  type="checkbox"
                  id={`${fieldId(path)}-${option}`}
                  checked={chosen.includes(option)}
                  onChange={(event) =>
                    pick(book, path, option, event.currentTarget.checked, { chosen, options, all })
                  }
                />
                <span>{optionLabel(path, option)}</span>
              </label>
            </li>
          ))}
        </ul>
      </fieldset>
      <Problems book={book} path={path} />
    </details>
  );
}

function picked(book: DraftBook, path: string): readonly unknown[] {
  const list = book.draft.value.form.plainAt(pathOf(path));
  return Array.isArray(list) ? list : [];
}

interface Choice {
  readonly chosen: readonly unknown[];
  readonly options: readonly string[];
  readonly all: boolean;
}

function pick(book: DraftBook, path: string, option: string, on: boolean, choice: Choice): void {
  const place = pathOf(path);
  const { chosen, options, all } = choice;
  const listed = book.draft.peek().form.at(place).kind === 'list';
  const index = chosen.indexOf(option);
  const kept = options.filter((each) => (each === option ? on : chosen.includes(each)));
  const whole = all && kept.length === options.length;
  const edits: FormEdit[] = whole
    ? [{ kind: 'remove', path: place }]
    : listed && !on
      ? [{ kind: 'take', path: place, index }]
      : listed
        ? [{ kind: 'insert', path: place, index: chosen.length, value: option }]
        : [...siblings(book, path), { kind: 'set', path: place, value: kept }];
  book.edit(edits, { kind: 'changed', path });
}

/** Lists beside this one that must be there as soon as their group is. */
function siblings(book: DraftBook, path: string): FormEdit[] {
  if (path !== 'rules.on') return [];
  const off = ['rules', 'off'];
  return book.draft.peek().form.at(off).kind === 'absent' ? [{ kind: 'set', path: off, value: [] }] : [];
}
