import { describeProblem } from '../../text/describeProblem.ts';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { FORM } from '../../training/draft/formFields.ts';
import { schemaPathOf } from '../../training/draft/rawText.ts';
import type { ScenarioProblem } from '../../training/scenario/ScenarioProblem.ts';
import type { DraftBook } from './DraftBook.ts';
import { fieldLabel } from './fieldWords.ts';

/** What is still to be written or mended, with the way to each place in form and text. */
export function ProblemFold({ book }: { readonly book: DraftBook }) {
  const { problems } = book.draft.value;
  const count = problems.length;
  if (count === 0) {
    return (
      <p class="problem-none" id="draft-problems" role="status">
        {say('backRoom.inOrder')}
      </p>
    );
  }
  return (
    <details class="problem-fold">
      <summary>
        <span id="draft-problems" role="status">
          {say('backRoom.toMend', { count })}
        </span>
      </summary>
      <ul>
        {problems.map((problem) => (
          <li key={`${problem.line}:${problem.column}:${problem.code}`}>
            <span class="problem-words">
              <b>{problem.path === '' ? say('backRoom.theFile') : placeName(problem.path)}</b>{' '}
              {capital(describeProblem(problem))}
            </span>
            <span class="problem-ways">
              {isInForm(problem) && (
                <button
                  type="button"
                  class="plain"
                  onClick={() => book.goTo({ kind: 'field', path: problem.path })}
                >
                  {say('backRoom.toField')}
                </button>
              )}
              <button
                type="button"
                class="plain"
                onClick={() => book.goTo({ kind: 'line', line: problem.line, column: problem.column })}
              >
                {say('backRoom.toLine', { line: problem.line })}
              </button>
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function isInForm({ path }: ScenarioProblem): boolean {
  const written = schemaPathOf(path);
  return FORM.some(({ fields }) =>
    fields.some(
      (field) =>
        written === field.path ||
        written.startsWith(`${field.path}.`) ||
        written.startsWith(`${field.path}[`),
    ),
  );
}

/** A place as its field is called, with the number of the entry. */
function placeName(path: string): string {
  const number = /\[(\d+)\][^[]*$/.exec(path)?.[1];
  const label = fieldLabel(path.replace(/\[\d+\]$/, ''));
  return number === undefined ? label : `${label} ${Number(number) + 1}`;
}
