import type { ReadonlySignal } from '@preact/signals';
import { say } from '../../../text/translate.ts';
import type { Destination } from '../DraftBook.ts';
import { CodesSheet } from './CodesSheet.tsx';
import { DifficultySheet } from './DifficultySheet.tsx';
import { FailureLine } from './FailureLine.tsx';
import { FindingsList } from './FindingsList.tsx';
import { LearnersSheet } from './LearnersSheet.tsx';
import type { Mend } from './mendOf.ts';
import { PlanSheet } from './PlanSheet.tsx';
import { ProblemsList } from './ProblemsList.tsx';
import { ProofHeadline } from './ProofHeadline.tsx';
import type { ProofState } from './ProofState.ts';
import { RivalsSheet } from './RivalsSheet.tsx';
import { isStale, type ShownProof, shownProof } from './shownProof.ts';
import './proof.css';

interface ProofPanelProps {
  readonly state: ReadonlySignal<ProofState>;
  /** Shows a place of the draft, in the form or in the text. */
  readonly goTo: (place: Destination) => void;
  /** Writes a remedy into the draft. */
  readonly onMend: (mend: Mend) => void;
  /** Begins anew after a failure. */
  readonly again: () => void;
}

/** What the bench says of the draft, as it is worked out: what to mend first, then what it went by. */
export function ProofPanel({ state, goTo, onMend, again }: ProofPanelProps) {
  const now = state.value;
  const shown = shownProof(now);
  return (
    <section class="proof" aria-labelledby="proof-title" aria-busy={now.kind === 'proving'}>
      <ProofHeadline state={now} />
      {now.kind === 'failed' && <FailureLine failure={now.failure} again={again} />}
      {now.kind === 'broken' && <ProblemsList problems={now.problems} goTo={goTo} />}
      {shown !== null && (
        <>
          {isStale(shown) && <p class="proof-before quiet">{say('proofPanel.before')}</p>}
          <FindingsList findings={shown.findings} goTo={goTo} onMend={onMend} />
          <Sheets shown={shown} done={now.kind === 'proved'} />
        </>
      )}
    </section>
  );
}

function Sheets({ shown, done }: { readonly shown: ShownProof; readonly done: boolean }) {
  const { plan, codes, learners, variants } = shown;
  return (
    <div class="proof-sheets">
      {plan !== null && <PlanSheet plan={plan} variants={variants ?? []} />}
      {codes !== null && <CodesSheet codes={codes} />}
      {plan !== null && <RivalsSheet plan={plan} />}
      {plan !== null && <LearnersSheet learners={learners} plan={plan.is} done={done} />}
      {plan !== null && <DifficultySheet plan={plan} />}
    </div>
  );
}
