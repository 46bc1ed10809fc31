import { codesInWords } from '../../../text/describeProof.ts';
import { fixed, money } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { Plain } from '../../../training/draft/FormEdit.ts';
import type { ProofFinding, StatedCodes } from '../../../training/proof/ScenarioProof.ts';

/** A finding's remedy that is one value in one place: what is written where, and what the key that does it says. */
export interface Mend {
  readonly path: string;
  readonly value: Plain;
  readonly words: string;
}

/** The remedy that can be done by one key; null where somebody has to think of it. */
export function mendOf(finding: ProofFinding): Mend | null {
  switch (finding.kind) {
    case 'codes-differ':
      return codesInto(1, finding.held);
    case 'variant-codes-differ':
      return codesInto(finding.of.variant, finding.held);
    case 'limit-too-tight':
      return limitOf(finding);
    case 'level-differs':
      return {
        path: 'level',
        value: finding.estimate,
        words: say('proofPanel.mends.level', { level: finding.estimate }),
      };
    default:
      return null;
  }
}

/** The first of the variants is the job itself. */
function codesInto(variant: number, held: StatedCodes): Mend {
  const codes = codesInWords(held);
  const value = (['stored', 'pending'] as const).flatMap((status) =>
    held[status].map((code) => ({ code, status })),
  );
  if (variant > 1) {
    const words = say('proofPanel.mends.codesOf', { codes, variant });
    return { path: `variants[${variant - 2}].codes`, value, words };
  }
  const words =
    value.length === 0 ? say('proofPanel.mends.noCodes') : say('proofPanel.mends.codes', { codes });
  return { path: 'work-order.codes', value, words };
}

function limitOf({ of, wanted }: Extract<ProofFinding, { kind: 'limit-too-tight' }>): Mend {
  const path = `limits.${of}`;
  return of === 'dollars'
    ? { path, value: wanted, words: say('proofPanel.mends.dollars', { money: money(wanted) }) }
    : { path, value: wanted, words: say('proofPanel.mends.minutes', { minutes: fixed(wanted, 0) }) };
}
