import type { ComponentChildren } from 'preact';
import { describeProblem } from '../../../text/describeProblem.ts';
import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { fieldLimits } from '../../../training/draft/fieldLimits.ts';
import { pathOf, schemaPathOf } from '../../../training/draft/rawText.ts';
import { isStillToWrite } from '../../../training/draft/stillToWrite.ts';
import type { DraftBook } from '../DraftBook.ts';
import { fieldHint, fieldId, fieldLabel } from '../fieldWords.ts';

/** What every control of the form is given. */
export interface FieldProps {
  readonly book: DraftBook;
  /** In the file's writing: `work-order.codes[0].status`. */
  readonly path: string;
}

interface ShellProps extends FieldProps {
  /** The control is a group of its own controls, and the label its legend. */
  readonly group?: boolean;
  /** Beside the label: how many letters are left, what a figure is in other units. */
  readonly aside?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A control with its label, its hint and what is wrong with it. */
export function Field({ book, path, group, aside, children }: ShellProps) {
  const id = fieldId(path);
  const hint = fieldHint(path);
  const label = (
    <>
      {fieldLabel(path)}
      {(aside ?? mayBeEmpty(path)) !== undefined && (
        <span class="field-aside quiet">{aside ?? mayBeEmpty(path)}</span>
      )}
    </>
  );
  const body = (
    <>
      {hint !== null && (
        <p class="field-hint quiet" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {children}
      <Problems book={book} path={path} />
    </>
  );
  return group === true ? (
    <fieldset class="field field-group" id={id} tabIndex={-1} {...describedBy(book, path)}>
      <legend>{label}</legend>
      {body}
    </fieldset>
  ) : (
    <div class="field">
      <label for={id}>{label}</label>
      {body}
    </div>
  );
}

/** Of what is asked for, most has to be written; what has not says so. Of a choice the usual is chosen already. */
function mayBeEmpty(path: string): string | undefined {
  const limits = fieldLimits(schemaPathOf(path));
  if (limits === null || limits.options !== null) return undefined;
  const empty =
    limits.kind === 'list'
      ? (limits.least ?? 0) === 0 || limits.optional
      : limits.optional && limits.kind !== 'group';
  if (!empty) return undefined;
  // A variant that says nothing of its own goes by the job.
  return say(/^variants\[\d+\]\.(complaint|remark)$/.test(path) ? 'backRoom.asInJob' : 'backRoom.mayBeEmpty');
}

/** What is wrong in one place; where nothing is but that it is empty, that it waits to be written. */
export function Problems({ book, path }: FieldProps) {
  const problems = problemsOf(book, path);
  if (problems.length === 0) return null;
  const { form } = book.draft.value;
  const toWrite = problems.every((problem) => isStillToWrite(problem, form));
  const words = problems.map((problem) =>
    toWrite && form.at(pathOf(path)).kind !== 'list'
      ? say('backRoom.stillToWrite')
      : capital(describeProblem(problem)),
  );
  return (
    <p class={toWrite ? 'field-problem field-to-write' : 'field-problem'} id={`${fieldId(path)}-problem`}>
      {[...new Set(words)].join(' ')}
    </p>
  );
}

export function problemsOf(book: DraftBook, path: string) {
  return book.draft.value.problems.filter((problem) => problem.path === path);
}

/** What a control says of itself to those who do not see its surroundings. */
export function describedBy(book: DraftBook, path: string) {
  const id = fieldId(path);
  const { form } = book.draft.value;
  const problems = problemsOf(book, path);
  const wrong = problems.some((problem) => !isStillToWrite(problem, form));
  const by = [
    fieldHint(path) === null ? null : `${id}-hint`,
    problems.length > 0 ? `${id}-problem` : null,
  ].filter((each) => each !== null);
  return {
    ...(by.length === 0 ? {} : { 'aria-describedby': by.join(' ') }),
    ...(wrong ? { 'aria-invalid': true as const } : {}),
    ...(problems.length > 0 && !wrong ? { 'data-to-write': true } : {}),
  };
}
