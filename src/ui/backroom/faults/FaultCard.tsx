import { faultById, isRootCause } from '../../../sim/faults/catalogue.ts';
import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { FormEdit } from '../../../training/draft/FormEdit.ts';
import { faultsOfRig } from '../../../training/draft/faultsOfRig.ts';
import { pathOf, rawText } from '../../../training/draft/rawText.ts';
import { describedBy, type FieldProps, Problems } from '../fields/Field.tsx';
import { SwitchField } from '../fields/SwitchField.tsx';
import { fieldId } from '../fieldWords.ts';
import { faultSentence } from './FaultPicker.tsx';
import { Severities } from './Severities.tsx';

interface FaultCardProps extends FieldProps {
  /** Root causes that stand in the list. */
  readonly roots: readonly string[];
  readonly onTake: () => void;
  /** Asks for another fault in the place of this one. */
  readonly onReplace: () => void;
}

/** One fault: how bad it is, whether it comes and goes, and what is behind it. */
export function FaultCard({ book, path, roots, onTake, onReplace }: FaultCardProps) {
  const { form } = book.draft.value;
  const id = rawText(form.at(pathOf(`${path}.fault`)));
  const fault = faultById(id);
  return (
    <li class="fault-card" id={fieldId(path)} tabIndex={-1}>
      <div class="fault-card-head">
        <div>
          <strong>
            {fault === undefined ? say('backRoom.unknownFault', { fault: id }) : faultSentence(id)}
          </strong>
          {fault !== undefined && <span class="quiet fault-of">{capital(say(`items.${fault.item}`))}</span>}
        </div>
        <button
          type="button"
          class="entry-key"
          aria-label={say('backRoom.takeFault', { fault: faultSentence(id) })}
          title={say('backRoom.takeFault', { fault: faultSentence(id) })}
          onClick={onTake}
        >
          ×
        </button>
      </div>
      <Problems book={book} path={path} />
      <Problems book={book} path={`${path}.fault`} />
      {fault === undefined && (
        <button type="button" class="add" onClick={onReplace}>
          {say('backRoom.replaceFault')}
        </button>
      )}
      {fault?.severity != null && <Severities book={book} path={path} fault={fault} />}
      {fault?.severity === null && form.at(pathOf(`${path}.severity`)).kind !== 'absent' && (
        <Surplus book={book} path={`${path}.severity`} />
      )}
      {fault?.intermittent === 'each-trial' && <p class="field-hint quiet">{say('backRoom.eachTrial')}</p>}
      {(fault?.intermittent === 'when-moved' || form.at(pathOf(`${path}.when-moved`)).kind !== 'absent') && (
        <SwitchField book={book} path={`${path}.when-moved`} />
      )}
      {fault !== undefined && !isRootCause(id) && <Root book={book} path={`${path}.root`} roots={roots} />}
    </li>
  );
}

/** A key that this fault has no use for, with the way to take it out. */
function Surplus({ book, path }: FieldProps) {
  return (
    <>
      <Problems book={book} path={path} />
      <button
        type="button"
        class="add"
        onClick={() => book.edit([{ kind: 'remove', path: pathOf(path) }], { kind: 'removed', path })}
      >
        {say('backRoom.takeSeverity')}
      </button>
    </>
  );
}

function Root({ book, path, roots }: FieldProps & { readonly roots: readonly string[] }) {
  const known = faultsOfRig(book.draft.value.form)
    .map(({ id }) => id)
    .filter(isRootCause);
  const now = rawText(book.draft.value.form.at(pathOf(path)));
  const choose = (root: string): void => {
    const place = pathOf(path);
    const edits: FormEdit[] =
      root === ''
        ? [{ kind: 'remove', path: place }]
        : [
            { kind: 'set', path: place, value: root },
            // What is behind a fault is on the truck too.
            ...(roots.includes(root)
              ? []
              : [
                  {
                    kind: 'insert',
                    path: pathOf(path).slice(0, -2),
                    index: 99,
                    value: { fault: root },
                  } as const,
                ]),
          ];
    book.edit(edits, { kind: 'changed', path });
  };
  return (
    <div class="field">
      <label for={fieldId(path)}>{say('backRoom.root')}</label>
      <select
        id={fieldId(path)}
        value={now}
        onChange={(event) => choose(event.currentTarget.value)}
        {...describedBy(book, path)}
      >
        <option value="">{say('backRoom.noRoot')}</option>
        {now !== '' && !known.includes(now) && <option value={now}>{now}</option>}
        {known.map((root) => (
          <option key={root} value={root}>
            {faultSentence(root)}
          </option>
        ))}
      </select>
      <Problems book={book} path={path} />
    </div>
  );
}
