import { percent } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { ProofPlan } from '../../../training/proof/ScenarioProof.ts';
import { Sheet } from './Sheet.tsx';
import type { ShownPart } from './shownProof.ts';

/** What the complaint makes of the truth and of what else it could be, and what no test tells apart. */
export function RivalsSheet({ plan: { is: plan, stale } }: { readonly plan: ShownPart<ProofPlan> }) {
  const { group, rivals, truths } = plan;
  const bars = [
    ...truths.map((truth) => ({ ...truth, isTruth: true })),
    ...rivals.map((rival) => ({ ...rival, isTruth: false })),
  ];
  const most = Math.max(...bars.map(({ chance }) => chance));
  return (
    <Sheet name="rivals" title={say('proofPanel.rivals')} stale={stale}>
      <p class="quiet proof-small">{say('proofPanel.rivalsLine')}</p>
      <ul class="rival-bars">
        {bars.map(({ item, chance, isTruth }) => (
          <li key={item} class={isTruth ? 'rival-truth' : ''}>
            <span class="rival-name">
              {say(`items.${item}`)}
              {isTruth && <span class="tag">{say('proofPanel.truth')}</span>}
            </span>
            <span class="rival-track" aria-hidden="true">
              <span class="rival-bar" style={{ width: `${(100 * chance) / most}%` }} />
            </span>
            <span class="rival-chance">{percent(chance)}</span>
          </li>
        ))}
      </ul>
      {rivals.length === 0 && <p class="proof-small">{say('proofPanel.nothingLikely')}</p>}
      <p class="proof-small">
        {group.length > 1
          ? say('proofPanel.group', { items: group.map((item) => say(`items.${item}`)).join(', ') })
          : say('proofPanel.groupNone')}
      </p>
    </Sheet>
  );
}
