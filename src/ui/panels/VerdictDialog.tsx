import { useSignal } from '@preact/signals';
import { describeEntry } from '../../text/describeEntry.ts';
import { say } from '../../text/translate.ts';
import type { VerdictItem } from '../../training/sitting/SittingAction.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { ITEM_GROUPS } from './itemGroups.ts';

const MOST_CITES = 8;

/** Name the bad item, cite the proof, be asked once, then locked. */
export function VerdictDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const item = useSignal<VerdictItem | null>(null);
  const cites = useSignal<readonly number[]>([]);
  const asking = useSignal(false);
  const log = desk.log.value;
  const toggle = (id: number): void => {
    if (cites.value.includes(id)) cites.value = cites.value.filter((cited) => cited !== id);
    else if (cites.value.length < MOST_CITES) cites.value = [...cites.value, id];
  };
  if (asking.value && item.value !== null) {
    const named = item.value;
    return (
      <Dialog title={say('verdict.ask')} onClose={onClose}>
        <p>{say('verdict.askText', { item: say(`items.${named}`), count: cites.value.length })}</p>
        <div class="dialog-foot">
          <button type="button" onClick={() => (asking.value = false)}>
            {say('verdict.review')}
          </button>
          <button
            type="button"
            class="act"
            onClick={() => {
              const refusal = desk.act({
                kind: 'give-verdict',
                item: named,
                cites: [...cites.value].sort((a, b) => a - b),
              });
              if (refusal === null) desk.tell(say('verdict.locked', { item: say(`items.${named}`) }));
              onClose();
            }}
          >
            {say('verdict.lock')}
          </button>
        </div>
      </Dialog>
    );
  }
  return (
    <Dialog title={say('verdict.title')} onClose={onClose} wide>
      <p>{say('verdict.lead')}</p>
      <div class="verdict-columns">
        <fieldset class="verdict-items">
          <legend>{say('verdict.item')}</legend>
          {ITEM_GROUPS.map(({ group, items }) => (
            <div key={group} class="verdict-group">
              <span class="quiet">{say(`itemGroups.${group}`)}</span>
              {items.map((id) => (
                <label key={id}>
                  <input
                    type="radio"
                    name="verdict-item"
                    checked={item.value === id}
                    onChange={() => (item.value = id)}
                  />
                  {say(`items.${id}`)}
                </label>
              ))}
            </div>
          ))}
        </fieldset>
        <fieldset class="verdict-cites">
          <legend>{say('verdict.cites', { count: cites.value.length, max: MOST_CITES })}</legend>
          <div class="cite-list">
            {log.length === 0 && <p class="quiet">{say('verdict.noEntries')}</p>}
            {log.map((entry) => {
              const words = describeEntry(entry, desk.functionsKnown.value);
              const cited = cites.value.includes(entry.id);
              return (
                <label key={entry.id}>
                  <input
                    type="checkbox"
                    checked={cited}
                    disabled={!cited && cites.value.length >= MOST_CITES}
                    onChange={() => toggle(entry.id)}
                  />
                  <span>
                    <b>{entry.id}</b> {words.what} <b>{words.value}</b>
                    {words.heard && ` · ${words.heard}`}
                    <span class="entry-conditions">{words.conditions}</span>
                  </span>
                </label>
              );
            })}
          </div>
        </fieldset>
      </div>
      <div class="dialog-foot">
        <span class="quiet" role="status">
          {item.value === null ? say('verdict.chooseItem') : ''}
        </span>
        <button
          type="button"
          class="act"
          disabled={item.value === null}
          onClick={() => (asking.value = true)}
        >
          {say('verdict.next')}
        </button>
      </div>
    </Dialog>
  );
}
