import { describeProblem } from '../../text/describeProblem.ts';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { FORM } from '../../training/draft/formFields.ts';
import { schemaPathOf } from '../../training/draft/rawText.ts';
import type { ScenarioProblem } from '../../training/scenario/ScenarioProblem.ts';
import type { Destination } from './DraftBook.ts';
import { placeName } from './fieldWords.ts';

interface ProblemRowProps {
  readonly problem: ScenarioProblem;
  readonly goTo: (place: Destination) => void;
}

/** One thing that is wrong with the file, by the name of its field, with the ways to it in form and text. */
export function ProblemRow({ problem, goTo }: ProblemRowProps) {
  const { path, line, column } = problem;
  return (
    <li>
      <span class="problem-words">
        <b>{path === '' ? say('backRoom.theFile') : placeName(path)}</b> {capital(describeProblem(problem))}
      </span>
      <span class="problem-ways">
        {isInForm(path) && (
          <button type="button" class="plain" onClick={() => goTo({ kind: 'field', path })}>
            {say('backRoom.toField')}
          </button>
        )}
        <button type="button" class="plain" onClick={() => goTo({ kind: 'line', line, column })}>
          {say('backRoom.toLine', { line })}
        </button>
      </span>
    </li>
  );
}

function isInForm(path: string): boolean {
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
