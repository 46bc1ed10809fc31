import type { ComponentChildren } from 'preact';
import { describeProblem } from '../../text/describeProblem.ts';
import { say } from '../../text/translate.ts';
import { canWrite, unreadProblem } from '../../training/draft/Draft.ts';
import type { Plain } from '../../training/draft/FormEdit.ts';
import { FORM, type FormField, type FormSection, isInside } from '../../training/draft/formFields.ts';
import { pathOf, rawText } from '../../training/draft/rawText.ts';
import { USUAL_WEIGHTS } from '../../training/scenario/weights.ts';
import type { DraftBook } from './DraftBook.ts';
import { FormNav } from './FormNav.tsx';
import { FaultsField } from './faults/FaultsField.tsx';
import { VariantsField } from './faults/VariantsField.tsx';
import { ChoiceField } from './fields/ChoiceField.tsx';
import { CodesField } from './fields/CodesField.tsx';
import { GroupField } from './fields/GroupField.tsx';
import { LinesField } from './fields/LinesField.tsx';
import { NumberField } from './fields/NumberField.tsx';
import { PicksField } from './fields/PicksField.tsx';
import { SeedField } from './fields/SeedField.tsx';
import { StepsField } from './fields/StepsField.tsx';
import { SwitchField } from './fields/SwitchField.tsx';
import { TextField } from './fields/TextField.tsx';

interface FormPaneProps {
  readonly book: DraftBook;
  readonly readings: ComponentChildren;
}

/** The form: every field of the format under its heading. */
export function FormPane({ book, readings }: FormPaneProps) {
  const draft = book.draft.value;
  const { form } = draft;
  const unread = unreadProblem(draft) !== null;
  const sections = FORM.filter((section) => isWanted(section, book)).flatMap((section) => {
    const fields = unread
      ? section.fields.filter(({ path }) => canWrite(draft, pathOf(path)))
      : section.fields;
    return fields.length === 0 ? [] : [{ ...section, fields }];
  });
  const shown = !form.shut && sections.length > 0;
  return (
    <form class="back-form" onSubmit={(event) => event.preventDefault()}>
      {unread && <Unread book={book} />}
      {shown && <FormNav book={book} sections={sections} />}
      {shown && (
        <label class="field-turn form-languages">
          <input
            type="checkbox"
            checked={book.bothLanguages.value}
            onChange={(event) => {
              book.bothLanguages.value = event.currentTarget.checked;
            }}
          />
          <span>{say('backRoom.bothLanguages')}</span>
        </label>
      )}
      {form.shut && !unread && <p class="field-problem">{say('backRoom.shut')}</p>}
      {!form.shut &&
        sections.map((section) => (
          <section key={section.id} class="form-section" aria-labelledby={`form-${section.id}`}>
            <h3 id={`form-${section.id}`} tabIndex={-1}>
              {say(`backRoom.sections.${section.id}.title`)}
            </h3>
            <p class="quiet">{say(`backRoom.sections.${section.id}.line`)}</p>
            {section.fields
              .filter(({ path }) => !isInside(path))
              .map((field) => (
                <ControlOf key={field.path} book={book} field={field} readings={readings} />
              ))}
          </section>
        ))}
    </form>
  );
}

/** In the place of all fields that cannot be read: what wants mending first, and the way there. */
function Unread({ book }: { readonly book: DraftBook }) {
  const problem = unreadProblem(book.draft.value);
  if (problem === null) return null;
  const { line, column } = problem;
  return (
    <div class="field-not-shown form-unread">
      <p>
        {say('backRoom.unread', { line, problem: describeProblem(problem) })} {say('backRoom.unreadParts')}
      </p>
      <button type="button" class="plain" onClick={() => book.goTo({ kind: 'line', line, column })}>
        {say('backRoom.toLine', { line })}
      </button>
    </div>
  );
}

/** Steps are asked for where the job leads by the hand, and shown wherever there are some. */
function isWanted({ id }: FormSection, book: DraftBook): boolean {
  if (id !== 'steps') return true;
  const { form } = book.draft.value;
  const mode = rawText(form.at(['mode']));
  return mode === 'walkthrough' || mode === 'introduction' || form.at(['walkthrough']).kind !== 'absent';
}

/** What an optional group is when it is first wanted. */
const FRESH: Readonly<Record<string, Plain>> = {
  weights: { ...USUAL_WEIGHTS },
  limits: { minutes: 60 },
};

interface ControlProps {
  readonly book: DraftBook;
  readonly field: FormField;
  readonly readings: ComponentChildren;
}

function ControlOf({ book, field: { path, control }, readings }: ControlProps) {
  switch (control) {
    case 'line':
      return <TextField book={book} path={path} long={false} />;
    case 'paragraph':
      return <TextField book={book} path={path} long />;
    case 'number':
      return <NumberField book={book} path={path} />;
    case 'choice':
      return <ChoiceField book={book} path={path} />;
    case 'switch':
      return <SwitchField book={book} path={path} />;
    case 'lines':
      return <LinesField book={book} path={path} />;
    case 'rows':
      return <CodesField book={book} path={path} />;
    case 'picks':
      return <PicksField book={book} path={path} all={false} />;
    case 'all-picks':
      return <PicksField book={book} path={path} all />;
    case 'group':
      return <GroupField book={book} path={path} fresh={FRESH[path] ?? {}} />;
    case 'seed':
      return <SeedField book={book} path={path} />;
    case 'variants':
      return <VariantsField book={book} path={path} />;
    case 'faults':
      return <FaultsField book={book} path={path} readings={readings} />;
    case 'steps':
      return <StepsField book={book} path={path} />;
  }
}
