import { say } from '../../../text/translate.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { CodesField } from '../fields/CodesField.tsx';
import type { FieldProps } from '../fields/Field.tsx';
import { LinesField } from '../fields/LinesField.tsx';
import { ListField } from '../fields/ListField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { SwitchField } from '../fields/SwitchField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { FaultsField } from './FaultsField.tsx';
import { OwnPart } from './OwnPart.tsx';

/** Other truths of the same job. What one leaves out is as in the job itself. */
export function VariantsField({ book, path }: FieldProps) {
  const some = book.draft.value.form.at(pathOf(path)).kind !== 'absent';
  return (
    <details class="variants-fold" open={some}>
      <summary>{say('backRoom.variants')}</summary>
      <ListField
        book={book}
        path={path}
        fresh={{ faults: [] }}
        // The first is the job itself.
        heading={(number) => say('backRoom.variant', { number: number + 1 })}
        entry={(place) => (
          <>
            <FaultsField book={book} path={`${place}.faults`} readings={null} />
            <TextField book={book} path={`${place}.complaint`} long />
            <TextField book={book} path={`${place}.remark`} long />
            <OwnPart
              book={book}
              path={`${place}.codes`}
              label={say('backRoom.own.codes')}
              ofJob="work-order.codes"
              bare={[]}
            >
              <CodesField book={book} path={`${place}.codes`} />
            </OwnPart>
            <OwnPart
              book={book}
              path={`${place}.history`}
              label={say('backRoom.own.history')}
              ofJob="work-order.history"
              bare={[]}
            >
              <LinesField book={book} path={`${place}.history`} />
            </OwnPart>
            <OwnPart
              book={book}
              path={`${place}.drives`}
              label={say('backRoom.own.drives')}
              ofJob="drives"
              bare={{ cycles: 6, refuelled: false }}
            >
              <NumberField book={book} path={`${place}.drives.cycles`} />
              <SwitchField book={book} path={`${place}.drives.refuelled`} />
            </OwnPart>
          </>
        )}
      />
    </details>
  );
}
