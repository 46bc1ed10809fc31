import { useSignal } from '@preact/signals';
import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import { capital, money } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { ITEM_GROUPS } from './itemGroups.ts';

/** The parts cupboard: what to fit, its price, asked once. Before the verdict it holds the tools only. */
export function CupboardDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const chosen = useSignal<ItemId | null>(null);
  const toolsOnly = desk.phase.value !== 'repair';
  const groups = ITEM_GROUPS.map(({ group, items }) => ({
    group,
    items: items.filter(
      (id): id is ItemId => id !== 'nothing-wrong' && (!toolsOnly || TOOL_ITEMS.includes(id)),
    ),
  })).filter(({ items }) => items.length > 0);
  if (chosen.value !== null) {
    const item = chosen.value;
    const words = { item: say(`items.${item}`), price: money(desk.priceOf(item)) };
    return (
      <Dialog title={say('cupboard.ask', words)} onClose={onClose}>
        {item === 'unit' && <p>{say('cupboard.keyOffHint')}</p>}
        <div class="dialog-foot">
          <button type="button" onClick={() => (chosen.value = null)}>
            {say('app.cancel')}
          </button>
          <button
            type="button"
            class="act"
            onClick={() => {
              if (desk.act({ kind: 'renew', item }) === null) {
                desk.tell(capital(say('cupboard.fitted', { item: words.item })));
              }
              onClose();
            }}
          >
            {say('cupboard.confirm')}
          </button>
        </div>
      </Dialog>
    );
  }
  return (
    <Dialog title={say('cupboard.title')} onClose={onClose}>
      <p>{say(toolsOnly ? 'cupboard.toolsLead' : 'cupboard.lead')}</p>
      {groups.map(({ group, items }) => (
        <section key={group} class="cupboard-group">
          <h3>{say(`itemGroups.${group}`)}</h3>
          <ul>
            {items.map((item) => (
              <li key={item}>
                <button type="button" onClick={() => (chosen.value = item)}>
                  <span>{say('cupboard.fit', { item: say(`items.${item}`) })}</span>
                  <b>{money(desk.priceOf(item))}</b>
                </button>
                {desk.renewed.value.some((renewed) => renewed.item === item) && (
                  <span class="tag">{say('cupboard.fittedBefore')}</span>
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </Dialog>
  );
}
