import type { ItemId } from '../../sim/devices/items.ts';
import { capital, money } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';

interface FitDialogProps {
  readonly desk: Desk;
  readonly item: ItemId;
  readonly onBack: () => void;
  readonly onClose: () => void;
}

/** Asks once before a part is fitted. */
export function FitDialog({ desk, item, onBack, onClose }: FitDialogProps) {
  const name = say(`items.${item}`);
  const price = desk.priceOf(item);
  const fit = (): void => {
    if (desk.act({ kind: 'renew', item }) === null) {
      desk.tell(capital(say('cupboard.fitted', { item: name })));
    }
    onClose();
  };
  return (
    <Dialog
      title={
        price === 0
          ? say('cupboard.askFree', { item: name })
          : say('cupboard.ask', { item: name, price: money(price) })
      }
      onClose={onBack}
      asks
    >
      <p>{say(price === 0 ? 'cupboard.askFreeText' : 'cupboard.askText')}</p>
      {item === 'unit' && <p>{say('cupboard.keyOffHint')}</p>}
      <div class="dialog-foot">
        <button type="button" onClick={onBack}>
          {say('app.cancel')}
        </button>
        <button type="button" class="act" onClick={fit}>
          {say('cupboard.confirm')}
        </button>
      </div>
    </Dialog>
  );
}
