import { say } from '../../../text/translate.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import type { FieldProps } from '../fields/Field.tsx';
import { ListField } from '../fields/ListField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { FaultsField } from './FaultsField.tsx';

/** Other truths of the same job. What one leaves out is as in the job itself; its codes and drives are written in the text. */
export function VariantsField({ book, path }: FieldProps) {
  const some = book.draft.value.form.at(pathOf(path)).kind !== 'absent';
  return (
    <details class="variants-fold" open={some}>
      <summary>{say('backRoom.variants')}</summary>
      <ListField
        book={book}
        path={path}
        fresh={{ faults: [] }}
        entry={(place, number) => (
          <div class="variant">
            <h4>{say('backRoom.variant', { number: number + 1 })}</h4>
            <FaultsField book={book} path={`${place}.faults`} readings={null} />
            <TextField book={book} path={`${place}.complaint`} long />
            <TextField book={book} path={`${place}.remark`} long />
          </div>
        )}
      />
    </details>
  );
}
