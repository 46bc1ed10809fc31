import { say } from '../../text/translate.ts';
import type { Edition } from './Edition.ts';

/** Below the job board: whether the program is there when the network is not. */
export function KeptLine({ edition }: { readonly edition: Edition }) {
  const kept = edition.kept.value;
  return (
    <p class="kept-line quiet" role="status">
      {kept !== 'unknown' && say(`edition.${kept}`)}
    </p>
  );
}
