import { say } from '../../../text/translate.ts';
import type { BackRoomFailure } from './ProofState.ts';

interface FailureLineProps {
  readonly failure: BackRoomFailure;
  readonly again: () => void;
}

/** Nothing can be worked out just now: why, that the draft is safe, and what to do. */
export function FailureLine({ failure: { code, detail }, again }: FailureLineProps) {
  return (
    <p class="proof-failure" role="alert">
      {say(`proofPanel.failures.${code}`, { detail })}{' '}
      <button type="button" onClick={again}>
        {say('evidence.again')}
      </button>
    </p>
  );
}
