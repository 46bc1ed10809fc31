import { useSignal } from '@preact/signals';
import { say } from '../../text/translate.ts';
import type { Edition } from './Edition.ts';

interface NewerVersionBarProps {
  readonly edition: Edition;
  /** On the job board nothing is under way that a new page could break off. */
  readonly onBoard: boolean;
}

/** A newer version is offered on the job board; anywhere else it only says that it will be. */
export function NewerVersionBar({ edition, onBoard }: NewerVersionBarProps) {
  const hidden = useSignal(false);
  const newer = edition.newer.value;
  if (newer === null || (hidden.value && !onBoard)) return null;
  return (
    <div class="trouble newer-version" role="status">
      <p>{say(onBoard ? `edition.${newer}` : 'edition.later')}</p>
      {onBoard ? (
        newer !== 'taking' && (
          <button type="button" class="act" onClick={() => edition.takeNewer()}>
            {say(newer === 'taken-elsewhere' ? 'troubles.reload' : 'edition.take')}
          </button>
        )
      ) : (
        <button type="button" class="plain" onClick={() => (hidden.value = true)}>
          {say('troubles.dismiss')}
        </button>
      )}
    </div>
  );
}
