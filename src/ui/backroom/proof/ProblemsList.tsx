import type { ScenarioProblem } from '../../../training/scenario/ScenarioProblem.ts';
import type { Destination } from '../DraftBook.ts';
import { ProblemRow } from '../ProblemRow.tsx';

interface ProblemsListProps {
  readonly problems: readonly ScenarioProblem[];
  readonly goTo: (place: Destination) => void;
}

/** What keeps the draft from being read, place by place. */
export function ProblemsList({ problems, goTo }: ProblemsListProps) {
  return (
    <ul class="problem-list">
      {problems.map((problem) => (
        <ProblemRow
          key={`${problem.code} ${problem.line}:${problem.column} ${problem.path}`}
          problem={problem}
          goTo={goTo}
        />
      ))}
    </ul>
  );
}
