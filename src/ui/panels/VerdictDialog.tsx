import { useSignal } from '@preact/signals';
import { describeEntry } from '../../text/describeEntry.ts';
import { besideReading } from '../../text/entryBeside.ts';
import { capital } from '../../text/format.ts';
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
  if (asking.value && item.value !== null) {
    return (
      <LockDialog
        desk={desk}
        item={item.value}
        cites={cites.value}
        onBack={() => (asking.value = false)}
        onClose={onClose}
      />
    );
  }
  const toggle = (id: number): void => {
    if (cites.value.includes(id)) cites.value = cites.value.filter((cited) => cited !== id);
    else if (cites.value.length < MOST_CITES) cites.value = [...cites.value, id];
  };
  return (
    <Dialog title={say('verdict.title')} onClose={onClose} wide>
      <p>{say('verdict.lead')}</p>
      <div class="verdict-columns">
        <ItemChoice chosen={item.value} onChoose={(id) => (item.value = id)} />
        <CiteChoice desk={desk} cited={cites.value} onToggle={toggle} />
      </div>
      <div class="dialog-foot">
        <span class="verdict-now" role="status">
          {item.value === null ? say('verdict.chooseItem') : capital(say(`items.${item.value}`))}
          {item.value !== null && (
            <span class="quiet">
              {' '}
              · {say('verdict.cites', { count: cites.value.length, max: MOST_CITES })}
            </span>
          )}
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

interface ItemChoiceProps {
  readonly chosen: VerdictItem | null;
  readonly onChoose: (item: VerdictItem) => void;
}

function ItemChoice({ chosen, onChoose }: ItemChoiceProps) {
  return (
    <fieldset class="verdict-items">
      <legend>{say('verdict.item')}</legend>
      <div class="verdict-groups">
        {ITEM_GROUPS.map(({ group, items }) => (
          <div key={group} class="verdict-group">
            <span class="quiet">{say(`itemGroups.${group}`)}</span>
            {items.map((id) => (
              <label key={id}>
                <input
                  type="radio"
                  name="verdict-item"
                  checked={chosen === id}
                  onChange={() => onChoose(id)}
                />
                {say(`items.${id}`)}
              </label>
            ))}
          </div>
        ))}
      </div>
    </fieldset>
  );
}

interface CiteChoiceProps {
  readonly desk: Desk;
  readonly cited: readonly number[];
  readonly onToggle: (id: number) => void;
}

function CiteChoice({ desk, cited, onToggle }: CiteChoiceProps) {
  const log = desk.log.value;
  const full = cited.length >= MOST_CITES;
  return (
    <fieldset class="verdict-cites">
      <legend>{say('verdict.cites', { count: cited.length, max: MOST_CITES })}</legend>
      <div class="cite-list">
        {log.length === 0 && <p class="quiet">{say('verdict.noEntries')}</p>}
        {log.map((entry) => {
          const words = describeEntry(entry, desk.functionsKnown.value);
          const isCited = cited.includes(entry.id);
          return (
            <label key={entry.id}>
              <input
                type="checkbox"
                checked={isCited}
                disabled={!isCited && full}
                onChange={() => onToggle(entry.id)}
              />
              <span>
                <b>{entry.id}</b> {words.what} <b>{[words.value, ...besideReading(entry)].join(', ')}</b>
                {words.heard && ` · ${words.heard}`}
                {entry.about === 'reading' && <span class="entry-conditions">{words.conditions}</span>}
              </span>
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}

interface LockDialogProps {
  readonly desk: Desk;
  readonly item: VerdictItem;
  readonly cites: readonly number[];
  readonly onBack: () => void;
  readonly onClose: () => void;
}

function LockDialog({ desk, item, cites, onBack, onClose }: LockDialogProps) {
  const named = say(`theItems.${item}`);
  const lock = (): void => {
    const refusal = desk.act({ kind: 'give-verdict', item, mode: null, cites: [...cites].sort((a, b) => a - b) });
    if (refusal === null) desk.tell(say('verdict.locked', { item: named }));
    onClose();
  };
  return (
    <Dialog title={say('verdict.ask')} onClose={onClose}>
      <p>{say('verdict.askText', { item: named, count: cites.length })}</p>
      <div class="dialog-foot">
        <button type="button" onClick={onBack}>
          {say('verdict.review')}
        </button>
        <button type="button" class="act" onClick={lock}>
          {say('verdict.lock')}
        </button>
      </div>
    </Dialog>
  );
}
