import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { Remarks } from './Remarks.tsx';
import { notAsOnTruck, toolsOnTruck } from './roadNeeds.ts';

/** Asks once before the job is closed. */
export function CloseJobDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const seen = desk.observation.value;
  const tools = toolsOnTruck(seen);
  const unlike = notAsOnTruck(seen);
  const left = tools.length > 0 || unlike.length > 0;
  return (
    <Dialog title={say('closing.title')} onClose={onClose} asks>
      <p>
        {say('closing.text')} {!left && say('closing.restored')}
      </p>
      <Remarks title={say('closing.stillOn')} remarks={tools} />
      <Remarks title={say('closing.asItStands')} remarks={unlike} />
      {seen.key !== 'off' && <p>{say('closing.keyOn')}</p>}
      <p>{say('closing.tested')}</p>
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
