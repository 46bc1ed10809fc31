import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';

interface ClearCodesProps {
  readonly desk: Desk;
  /** Nobody has read the codes yet. */
  readonly unread: boolean;
  readonly onClose: () => void;
}

/** Asks once before codes are cleared, and advises against it while nobody has read them; then reads again, so that what stays is seen. */
export function ClearCodesDialog({ desk, unread, onClose }: ClearCodesProps) {
  const clear = (): void => {
    onClose();
    if (desk.act({ kind: 'clear-codes' }) === null) desk.act({ kind: 'read-codes' });
  };
  return (
    <Dialog title={say('reader.clearTitle')} onClose={onClose} asks>
      <p>{say('reader.clearText')}</p>
      {unread && <p class="caution">{say('reader.clearUnread')}</p>}
      <div class="dialog-foot">
        <button type="button" class={unread ? 'act' : ''} onClick={onClose}>
          {say('reader.clearKeep')}
        </button>
        <button type="button" class={unread ? '' : 'act'} onClick={clear}>
          {say('reader.clearDo')}
        </button>
      </div>
    </Dialog>
  );
}
