import type { ReadonlySignal } from '@preact/signals';
import { say } from '../../../text/translate.ts';
import type { PlaceInFile, ProofState } from './ProofState.ts';

interface ProofPanelProps {
  readonly state: ReadonlySignal<ProofState>;
  /** Shows a place of the draft, in the form or in the text. */
  readonly goTo: (place: PlaceInFile) => void;
  /** Begins anew after a failure. */
  readonly again: () => void;
}

/** What the bench says of the draft, as it is worked out. */
export function ProofPanel({ state }: ProofPanelProps) {
  return (
    <section class="proof">
      <p>{say(state.value.kind === 'proved' ? 'proof.fit' : 'proof.working')}</p>
    </section>
  );
}
