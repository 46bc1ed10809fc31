import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { faultById, isRootCause } from '../../../sim/faults/catalogue.ts';
import { say } from '../../../text/translate.ts';
import { faultsOfRig } from '../../../training/draft/faultsOfRig.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { Field, type FieldProps, Problems } from '../fields/Field.tsx';
import { NotShown } from '../fields/NotShown.tsx';
import { fieldId } from '../fieldWords.ts';
import { focusSoon } from '../focusSoon.ts';
import { FaultCard } from './FaultCard.tsx';
import { FaultPicker } from './FaultPicker.tsx';

interface FaultsFieldProps extends FieldProps {
  /** What the standard tests would read with these faults. */
  readonly readings: ComponentChildren;
}

/** What is wrong with the truck: faults as cards, chosen by the item that they sit in. */
export function FaultsField({ book, path, readings }: FaultsFieldProps) {
  /** For which place in the list a fault is being chosen. */
  const picking = useSignal<number | null>(null);
  const raw = book.draft.value.form.at(pathOf(path));
  if (raw.kind !== 'list' && raw.kind !== 'absent' && raw.kind !== 'nothing') {
    return (
      <Field book={book} path={path} group>
        <NotShown book={book} path={path} />
      </Field>
    );
  }
  const length = raw.kind === 'list' ? raw.length : 0;
  const most = fieldLimits(path)?.most ?? 4;
  const chosen = Array.from({ length }, (_, i) =>
    book.draft.value.form.plainAt([...pathOf(path), i, 'fault']),
  );
  const add = (fault: string): void => {
    const index = picking.value ?? length;
    picking.value = null;
    const degrees = faultById(fault)?.severity != null;
    const value = { fault, ...(degrees ? { severity: 0.5 } : {}) };
    const list = pathOf(path);
    book.edit(
      [
        index < length
          ? { kind: 'set', path: [...list, index], value }
          : { kind: 'insert', path: list, index: length, value },
      ],
      { kind: index < length ? 'changed' : 'added', path: `${path}[${index}]` },
    );
    focusSoon(`#${fieldId(`${path}[${index}]`)}`);
  };
  const take = (index: number): void => {
    book.edit([{ kind: 'take', path: pathOf(path), index }], { kind: 'removed', path: `${path}[${index}]` });
    focusSoon(`#${fieldId(path)}`);
  };
  return (
    <fieldset class="field field-group" id={fieldId(path)} tabIndex={-1}>
      <legend class="visually-hidden">{say('formFields.faults.label')}</legend>
      <Problems book={book} path={path} />
      {length === 0 && <p class="quiet">{say('backRoom.noFaults')}</p>}
      <ul class="fault-cards">
        {chosen.slice(0, MOST_SHOWN).map((fault, index) => (
          <FaultCard
            key={`${index} ${String(fault)}`}
            book={book}
            path={`${path}[${index}]`}
            roots={rootsAmong(chosen)}
            onTake={() => take(index)}
            onReplace={() => (picking.value = index)}
          />
        ))}
      </ul>
      {length < most && (
        <button type="button" class="add" onClick={() => (picking.value = length)}>
          {say('backRoom.addFault')}
        </button>
      )}
      {readings}
      {picking.value !== null && (
        <FaultPicker
          faults={faultsOfRig(book.draft.value.form)}
          chosen={chosen}
          onPick={add}
          onClose={() => (picking.value = null)}
        />
      )}
    </fieldset>
  );
}

const MOST_SHOWN = 20;

function rootsAmong(chosen: readonly unknown[]): readonly string[] {
  return chosen.filter((each): each is string => typeof each === 'string' && isRootCause(each));
}
