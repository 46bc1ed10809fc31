import { say } from '../../text/translate.ts';
import type { DraftBook } from './DraftBook.ts';
import { ProblemRow } from './ProblemRow.tsx';

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
          <ProblemRow
            key={`${problem.line}:${problem.column}:${problem.code}`}
            problem={problem}
            goTo={(place) => book.goTo(place)}
          />
        ))}
      </ul>
    </details>
  );
}
