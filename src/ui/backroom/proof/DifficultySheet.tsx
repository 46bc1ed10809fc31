import { capital } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { ProofPlan } from '../../../training/proof/ScenarioProof.ts';
import { LevelSign } from '../../panels/LevelSign.tsx';
import { Sheet } from './Sheet.tsx';
import type { ShownPart } from './shownProof.ts';

/** The estimate, and what makes it so. */
export function DifficultySheet({ plan: { is: plan, stale } }: { readonly plan: ShownPart<ProofPlan> }) {
  const { level, because } = plan.difficulty;
  return (
    <Sheet name="difficulty" title={say('proofPanel.difficulty')} stale={stale}>
      <p class="proof-level">
        <LevelSign level={level} /> {say('proofPanel.level', { level })}
      </p>
      {because.length === 0 ? (
        <p class="proof-small">{say('proofPanel.plain')}</p>
      ) : (
        <ul class="proof-small">
          {because.map((reason) => (
            <li key={reason}>{capital(say(`proof.because.${reason}`))}</li>
          ))}
        </ul>
      )}
    </Sheet>
  );
}
