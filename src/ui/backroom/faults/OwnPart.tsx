import type { ComponentChildren } from 'preact';
import type { Plain } from '../../../training/draft/FormEdit.ts';
import { pathOf } from '../../../training/draft/rawText.ts';
import { type FieldProps, Problems } from '../fields/Field.tsx';
import { fieldId } from '../fieldWords.ts';

interface OwnPartProps extends FieldProps {
  readonly label: string;
  /** Where the job itself says it; a part of one's own begins with what stands there. */
  readonly ofJob: string;
  /** What the part is where the job says nothing. */
  readonly bare: Plain;
  readonly children: ComponentChildren;
}

/** A part of a variant that is as in the job until the variant is given its own. */
export function OwnPart({ book, path, label, ofJob, bare, children }: OwnPartProps) {
  const { form } = book.draft.value;
  const there = form.at(pathOf(path)).kind !== 'absent';
  const turn = (on: boolean): void => {
    const place = pathOf(path);
    const value = (book.now().plainAt(pathOf(ofJob)) as Plain | undefined) ?? bare;
    book.edit([on ? { kind: 'set', path: place, value } : { kind: 'remove', path: place }], {
      kind: on ? 'added' : 'removed',
      path,
    });
  };
  return (
    <div class="own-part">
      <label class="field-turn">
        <input
          type="checkbox"
          id={`${fieldId(path)}-own`}
          checked={there}
          onChange={(event) => turn(event.currentTarget.checked)}
        />
        <span>{label}</span>
      </label>
      {there ? children : <Problems book={book} path={path} />}
    </div>
  );
}
