import { describeFinding } from '../../../text/describeProof.ts';
import { say } from '../../../text/translate.ts';
import type { ProofFinding } from '../../../training/proof/ScenarioProof.ts';
import type { Destination } from '../DraftBook.ts';
import { placeOfFinding } from './placeOfFinding.ts';

interface FindingsListProps {
  readonly findings: readonly ProofFinding[];
  readonly goTo: (place: Destination) => void;
}

/** What stands against giving it out, and what is worth a second look, each with its remedy and the way there. */
export function FindingsList({ findings, goTo }: FindingsListProps) {
  if (findings.length === 0) return null;
  const sorted = [...findings].sort((one, other) => Number(other.forbids) - Number(one.forbids));
  return (
    <ul class="proof-findings">
      {sorted.map((finding) => (
        <Finding key={JSON.stringify(finding)} finding={finding} goTo={goTo} />
      ))}
    </ul>
  );
}

function Finding({
  finding,
  goTo,
}: {
  readonly finding: ProofFinding;
  readonly goTo: FindingsListProps['goTo'];
}) {
  const { name, path } = placeOfFinding(finding);
  return (
    <li class={finding.forbids ? 'proof-finding proof-finding-mend' : 'proof-finding'}>
      <span class="proof-finding-sign">{say(finding.forbids ? 'proofPanel.mend' : 'proofPanel.note')}</span>
      <p>{describeFinding(finding)}</p>
      <button type="button" class="plain" onClick={() => goTo({ kind: 'field', path })}>
        {say('proofPanel.goTo', { place: say(`proofPanel.places.${name}`) })}
      </button>
    </li>
  );
}
