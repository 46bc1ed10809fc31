import type { ComponentChildren } from 'preact';
import { describeProblem } from '../../../text/describeProblem.ts';
import { capital } from '../../../text/format.ts';
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
      {aside !== undefined && <span class="field-aside quiet">{aside}</span>}
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

/** What is wrong in one place. */
export function Problems({ book, path }: FieldProps) {
  const problems = problemsOf(book, path);
  if (problems.length === 0) return null;
  return (
    <p class="field-problem" id={`${fieldId(path)}-problem`}>
      {problems.map((problem) => capital(describeProblem(problem))).join(' ')}
    </p>
  );
}

export function problemsOf(book: DraftBook, path: string) {
  return book.draft.value.problems.filter((problem) => problem.path === path);
}

/** What a control says of itself to those who do not see its surroundings. */
export function describedBy(book: DraftBook, path: string) {
  const id = fieldId(path);
  const wrong = problemsOf(book, path).length > 0;
  const by = [fieldHint(path) === null ? null : `${id}-hint`, wrong ? `${id}-problem` : null].filter(
    (each) => each !== null,
  );
  return {
    ...(by.length === 0 ? {} : { 'aria-describedby': by.join(' ') }),
    ...(wrong ? { 'aria-invalid': true as const } : {}),
  };
}
