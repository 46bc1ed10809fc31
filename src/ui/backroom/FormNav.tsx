import { say } from '../../text/translate.ts';
import type { FormSection } from '../../training/draft/formFields.ts';
import { schemaPathOf } from '../../training/draft/rawText.ts';
import type { DraftBook } from './DraftBook.ts';

interface FormNavProps {
  readonly book: DraftBook;
  readonly sections: readonly FormSection[];
}

/** The parts of the form, each with how much is still to be written in it. */
export function FormNav({ book, sections }: FormNavProps) {
  const paths = book.draft.value.problems.map(({ path }) => schemaPathOf(path));
  return (
    <nav class="form-nav" aria-label={say('backRoom.parts')}>
      {sections.map(({ id, fields }) => {
        const count = paths.filter((path) => fields.some((field) => isWithin(path, field.path))).length;
        return (
          <button key={id} type="button" class="plain" onClick={() => goTo(id)}>
            {say(`backRoom.sections.${id}.title`)}
            {count > 0 && (
              <>
                {' '}
                <span class="form-nav-count">
                  {count}
                  <span class="visually-hidden"> {say('backRoom.toMendHere')}</span>
                </span>
              </>
            )}
          </button>
        );
      })}
    </nav>
  );
}

function isWithin(path: string, field: string): boolean {
  return path === field || path.startsWith(`${field}.`) || path.startsWith(`${field}[`);
}

function goTo(section: FormSection['id']): void {
  const heading = document.getElementById(`form-${section}`);
  heading?.focus();
  heading?.scrollIntoView({ block: 'start' });
}
