import { fixed } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import { LEARNERS } from '../../../training/learners/Learner.ts';
import { LEAST_MEDIAN, type LearnerScores, MOST_MEDIAN } from '../../../training/learners/validity.ts';
import type { ProofPlan } from '../../../training/proof/ScenarioProof.ts';
import { Sheet } from './Sheet.tsx';
import type { ShownPart } from './shownProof.ts';

interface LearnersSheetProps {
  readonly learners: ShownPart<readonly LearnerScores[]>;
  readonly plan: ProofPlan;
  readonly done: boolean;
}

type WorkingLearner = (typeof LEARNERS)[number];

/** What each simulated learner would score, on one scale with where it has to lie. */
export function LearnersSheet({ learners: { is: learners, stale }, done }: LearnersSheetProps) {
  const next = stale ? undefined : LEARNERS[learners.length];
  return (
    <Sheet name="learners" title={say('proofPanel.learners')} stale={stale}>
      <p class="quiet proof-small">{say('proofPanel.learnersLine')}</p>
      <table class="learner-plot">
        <thead class="visually-hidden">
          <tr>
            <th scope="col">{say('proofPanel.columnsLearners.learner')}</th>
            <th scope="col">{say('proofPanel.columnsLearners.score')}</th>
            <th scope="col">{say('proofPanel.columnsLearners.limit')}</th>
          </tr>
        </thead>
        <tbody>
          {LEARNERS.map((learner) => (
            <Row
              key={learner}
              learner={learner}
              scores={learners.find((one) => one.learner === learner) ?? null}
              sitting={!done && learner === next}
            />
          ))}
        </tbody>
      </table>
    </Sheet>
  );
}

interface RowProps {
  readonly learner: WorkingLearner;
  readonly scores: LearnerScores | null;
  readonly sitting: boolean;
}

function Row({ learner, scores, sitting }: RowProps) {
  const least = LEAST_MEDIAN[learner];
  const most = MOST_MEDIAN[learner];
  const missed =
    scores !== null &&
    ((least !== undefined && scores.median < least) || (most !== undefined && scores.median > most));
  return (
    <tr class={missed ? 'learner-missed' : ''}>
      <th scope="row">{say(`proof.learners.${learner}`)}</th>
      <td class="learner-score">
        <Track from={least ?? 0} to={most ?? 100} scores={scores} />
        <span class="learner-figure">
          {scores === null
            ? say(sitting ? 'proofPanel.sitting' : 'proofPanel.waiting')
            : `${fixed(scores.median, 0)}${missed ? ' !' : ''}`}
        </span>
      </td>
      <td class="learner-limit">
        {least !== undefined && say('proofPanel.atLeast', { limit: least })}
        {most !== undefined && say('proofPanel.atMost', { limit: most })}
      </td>
    </tr>
  );
}

interface TrackProps {
  readonly from: number;
  readonly to: number;
  readonly scores: LearnerScores | null;
}

/** Nought to a hundred: where the score has to lie, the middle half of the sittings, and the median. */
function Track({ from, to, scores }: TrackProps) {
  return (
    <svg class="learner-track" viewBox="0 0 100 14" preserveAspectRatio="none" aria-hidden="true">
      <line class="learner-scale" x1="0" x2="100" y1="7" y2="7" />
      <rect class="learner-allowed" x={from} y="3" width={to - from} height="8" />
      {scores !== null && (
        <>
          <line class="learner-spread" x1={scores.lower} x2={scores.upper} y1="7" y2="7" />
          <rect class="learner-median" x={Math.min(scores.median, 98.4)} y="0" width="1.6" height="14" />
        </>
      )}
    </svg>
  );
}
