import type { ReadonlySignal } from '@preact/signals';
import { say } from '../../../text/translate.ts';
import type { ReadingsState } from './ReadingsState.ts';

interface FaultReadingsProps {
  readonly state: ReadonlySignal<ReadingsState>;
  /** Begins anew after a failure. */
  readonly again: () => void;
}

/** What the standard tests would read with the faults as they are set, beside what they read without them. */
export function FaultReadings({ state }: FaultReadingsProps) {
  if (state.value.kind === 'nothing') return null;
  return (
    <section class="readings">
      <p>{say('proof.working')}</p>
    </section>
  );
}
