import { codesInWords } from '../../../text/describeProof.ts';
import { say } from '../../../text/translate.ts';
import type { ProofCodes } from '../../../training/proof/ScenarioProof.ts';
import { sameCodes } from '../../../training/proof/sameCodes.ts';
import { Sheet } from './Sheet.tsx';
import type { ShownPart } from './shownProof.ts';

/** What the work order says was read, beside what the drives leave. */
export function CodesSheet({ codes: { is: codes, stale } }: { readonly codes: ShownPart<ProofCodes> }) {
  const agree = sameCodes(codes.stated, codes.held);
  return (
    <Sheet name="codes" title={say('proofPanel.codes')} stale={stale}>
      <dl class="proof-codes">
        {(['stated', 'held'] as const).map((which) => (
          <div key={which}>
            <dt>{say(`proofPanel.${which}`)}</dt>
            <dd>{codesInWords(codes[which])}</dd>
          </div>
        ))}
      </dl>
      <p class={agree ? 'proof-agree' : 'proof-differ'}>
        {say(agree ? 'proofPanel.codesAgree' : 'proofPanel.codesDiffer')}
      </p>
    </Sheet>
  );
}
