import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';

/** Asks once before the job is closed. */
export function CloseJobDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  return (
    <Dialog title={say('closing.title')} onClose={onClose} asks>
      <p>{say('closing.text')}</p>
      <div class="dialog-foot">
        <button type="button" onClick={onClose}>
          {say('closing.stay')}
        </button>
        <button
          type="button"
          class="act"
          onClick={() => {
            onClose();
            desk.act({ kind: 'close-job' });
          }}
        >
          {say('closing.confirm')}
        </button>
      </div>
    </Dialog>
  );
}
