import { describeFinding } from '../../../text/describeProof.ts';
import { say } from '../../../text/translate.ts';
import type { ProofFinding } from '../../../training/proof/ScenarioProof.ts';
import type { Destination } from '../DraftBook.ts';
import { type Mend, mendOf } from './mendOf.ts';
import { placeOfFinding } from './placeOfFinding.ts';

interface FindingsListProps {
  readonly findings: readonly ProofFinding[];
  readonly goTo: (place: Destination) => void;
  /** Writes a remedy that is one value. */
  readonly onMend: (mend: Mend) => void;
}

/** What stands against giving it out, and what is worth a second look, each with its remedy and the way there. */
export function FindingsList({ findings, ...ways }: FindingsListProps) {
  if (findings.length === 0) return null;
  const sorted = [...findings].sort((one, other) => Number(other.forbids) - Number(one.forbids));
  return (
    <ul class="proof-findings">
      {sorted.map((finding) => (
        <Finding key={JSON.stringify(finding)} finding={finding} {...ways} />
      ))}
    </ul>
  );
}

interface FindingProps extends Omit<FindingsListProps, 'findings'> {
  readonly finding: ProofFinding;
}

function Finding({ finding, goTo, onMend }: FindingProps) {
  const { name, path } = placeOfFinding(finding);
  const mend = mendOf(finding);
  return (
    <li class={finding.forbids ? 'proof-finding proof-finding-mend' : 'proof-finding'}>
      <span class="proof-finding-sign">{say(finding.forbids ? 'proofPanel.mend' : 'proofPanel.note')}</span>
      <p>{describeFinding(finding)}</p>
      <span class="proof-finding-ways">
        {mend !== null && (
          <button type="button" onClick={() => onMend(mend)}>
            {mend.words}
          </button>
        )}
        <button type="button" class="plain" onClick={() => goTo({ kind: 'field', path })}>
          {say('proofPanel.goTo', { place: say(`proofPanel.places.${name}`) })}
        </button>
      </span>
    </li>
  );
}
