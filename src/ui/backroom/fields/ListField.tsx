import type { ComponentChildren } from 'preact';
import { say } from '../../../text/translate.ts';
import type { Plain } from '../../../training/draft/FormEdit.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, schemaPathOf } from '../../../training/draft/rawText.ts';
import { fieldId, fieldLabel } from '../fieldWords.ts';
import { focusSoon } from '../focusSoon.ts';
import { Field, type FieldProps, Problems } from './Field.tsx';
import { NotShown } from './NotShown.tsx';

interface ListFieldProps extends FieldProps {
  /** What a new entry is. */
  readonly fresh: Plain;
  /** Of entries that are groups of fields: what each is called, in a line of its own with its keys. */
  readonly heading?: (number: number) => string;
  /** One entry by its path and its number. */
  readonly entry: (path: string, number: number) => ComponentChildren;
}

/** Entries one under the other: added at the end, taken away, moved up and down. */
export function ListField({ book, path, fresh, heading, entry }: ListFieldProps) {
  const raw = book.draft.value.form.at(pathOf(path));
  if (raw.kind !== 'list' && raw.kind !== 'absent' && raw.kind !== 'nothing') {
    return (
      <Field book={book} path={path} group>
        <NotShown book={book} path={path} />
      </Field>
    );
  }
  const length = raw.kind === 'list' ? raw.length : 0;
  const limits = fieldLimits(schemaPathOf(path));
  const name = fieldLabel(path);
  const add = (): void => {
    book.edit([{ kind: 'insert', path: pathOf(path), index: length, value: fresh }], { kind: 'added', path });
    const added = fieldId(`${path}[${length}]`);
    // Of a group of fields the first is written in, not the group itself.
    focusSoon(`${heading === undefined ? `#${added}, ` : ''}[id^="${added}-"]`);
  };
  const take = (index: number): void => {
    const last = length === 1 && limits?.optional === true;
    book.edit([last ? { kind: 'remove', path: pathOf(path) } : { kind: 'take', path: pathOf(path), index }], {
      kind: 'removed',
      path,
    });
    focusSoon(`#${fieldId(path)}`);
  };
  const move = (from: number, to: number): void => {
    book.edit([{ kind: 'move', path: pathOf(path), from, to }], { kind: 'moved', path });
    focusSoon(
      `#${moveId(path, to, to < from ? 'up' : 'down')}:not(:disabled), #${moveId(path, to, to < from ? 'down' : 'up')}`,
    );
  };
  return (
    <Field book={book} path={path} group>
      {length > 0 && (
        <ol class="entries">
          {Array.from({ length: Math.min(length, MOST_SHOWN) }, (_, index) => (
            <li
              key={index}
              {...(heading === undefined
                ? { class: 'entry-row' }
                : { class: 'entry-row entry-group', id: fieldId(`${path}[${index}]`), tabIndex: -1 })}
            >
              {heading !== undefined && <h4>{heading(index + 1)}</h4>}
              <div class="entry-body">
                {entry(`${path}[${index}]`, index + 1)}
                <Problems book={book} path={`${path}[${index}]`} />
              </div>
              <div class="entry-keys">
                <EntryKey
                  id={moveId(path, index, 'up')}
                  sign="↑"
                  name={say('backRoom.moveUp', { name, number: index + 1 })}
                  disabled={index === 0}
                  onPress={() => move(index, index - 1)}
                />
                <EntryKey
                  id={moveId(path, index, 'down')}
                  sign="↓"
                  name={say('backRoom.moveDown', { name, number: index + 1 })}
                  disabled={index === length - 1}
                  onPress={() => move(index, index + 1)}
                />
                <EntryKey
                  sign="×"
                  name={say('backRoom.take', { name, number: index + 1 })}
                  onPress={() => take(index)}
                />
              </div>
            </li>
          ))}
        </ol>
      )}
      {length > MOST_SHOWN && (
        <p class="quiet">{say('backRoom.moreEntries', { count: length - MOST_SHOWN })}</p>
      )}
      {(limits?.most == null || length < limits.most) && (
        <button type="button" class="add" onClick={add} aria-label={say('backRoom.addTo', { name })}>
          {say('backRoom.add')}
        </button>
      )}
    </Field>
  );
}

/** No list of the format holds more. */
const MOST_SHOWN = 100;

function moveId(path: string, index: number, way: 'up' | 'down'): string {
  return `${fieldId(`${path}[${index}]`)}--${way}`;
}

interface EntryKeyProps {
  readonly id?: string;
  readonly sign: string;
  readonly name: string;
  readonly disabled?: boolean;
  readonly onPress: () => void;
}

function EntryKey({ id, sign, name, disabled, onPress }: EntryKeyProps) {
  return (
    <button
      type="button"
      class="entry-key"
      {...(id === undefined ? {} : { id })}
      aria-label={name}
      title={name}
      disabled={disabled === true}
      onClick={onPress}
    >
      {sign}
    </button>
  );
}
