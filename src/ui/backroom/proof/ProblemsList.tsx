import { describeProblem } from '../../../text/describeProblem.ts';
import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { ScenarioProblem } from '../../../training/scenario/ScenarioProblem.ts';
import type { PlaceInFile } from './ProofState.ts';

interface ProblemsListProps {
  readonly problems: readonly ScenarioProblem[];
  readonly goTo: (place: PlaceInFile) => void;
}

/** What keeps the draft from being read, place by place. */
export function ProblemsList({ problems, goTo }: ProblemsListProps) {
  return (
    <ul class="proof-findings">
      {problems.map((problem) => (
        <li
          key={`${problem.code} ${problem.line}:${problem.column} ${problem.path}`}
          class="proof-finding proof-finding-mend"
        >
          <span class="proof-finding-sign">{say('proofPanel.mend')}</span>
          <p>
            {problem.path !== '' && <code>{problem.path}</code>} {capital(describeProblem(problem))}
          </p>
          <button
            type="button"
            class="plain"
            onClick={() => goTo({ path: problem.path, line: problem.line })}
          >
            {say('proofPanel.line', { line: problem.line })}
          </button>
        </li>
      ))}
    </ul>
  );
}
