import { codesInWords, describeFinding } from '../../../text/describeProof.ts';
import { say } from '../../../text/translate.ts';
import type { ProofFinding, StatedCodes } from '../../../training/proof/ScenarioProof.ts';
import type { Destination } from '../DraftBook.ts';
import { placeOfFinding } from './placeOfFinding.ts';

interface FindingsListProps {
  readonly findings: readonly ProofFinding[];
  readonly goTo: (place: Destination) => void;
  readonly writeCodes: (path: string, held: StatedCodes) => void;
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

function Finding({ finding, goTo, writeCodes }: FindingProps) {
  const { name, path } = placeOfFinding(finding);
  const codes = codesToWrite(finding);
  return (
    <li class={finding.forbids ? 'proof-finding proof-finding-mend' : 'proof-finding'}>
      <span class="proof-finding-sign">{say(finding.forbids ? 'proofPanel.mend' : 'proofPanel.note')}</span>
      <p>{describeFinding(finding)}</p>
      <span class="proof-finding-ways">
        {codes !== null && (
          <button type="button" onClick={() => writeCodes(codesPathOf(codes.variant), codes.held)}>
            {writingWords(codes)}
          </button>
        )}
        <button type="button" class="plain" onClick={() => goTo({ kind: 'field', path })}>
          {say('proofPanel.goTo', { place: say(`proofPanel.places.${name}`) })}
        </button>
      </span>
    </li>
  );
}

interface CodesToWrite {
  /** Counting from 1: the job itself. */
  readonly variant: number;
  readonly held: StatedCodes;
}

/** Where a finding is mended by nothing but the codes that the drives leave: which, and where they are written. */
function codesToWrite(finding: ProofFinding): CodesToWrite | null {
  switch (finding.kind) {
    case 'codes-differ':
      return { variant: 1, held: finding.held };
    case 'variant-codes-differ':
      return { variant: finding.of.variant, held: finding.held };
    default:
      return null;
  }
}

function writingWords({ variant, held }: CodesToWrite): string {
  const codes = codesInWords(held);
  if (variant > 1) return say('proofPanel.writeCodesFor', { codes, variant });
  return isNone(held) ? say('proofPanel.takeCodes') : say('proofPanel.writeCodes', { codes });
}

function isNone({ stored, pending }: StatedCodes): boolean {
  return stored.length === 0 && pending.length === 0;
}

/** The first of the variants is the job itself. */
function codesPathOf(variant: number): string {
  return variant === 1 ? 'work-order.codes' : `variants[${variant - 2}].codes`;
}
