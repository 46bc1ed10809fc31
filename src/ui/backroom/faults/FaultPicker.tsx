import { useSignal } from '@preact/signals';
import type { FaultEntry } from '../../../sim/faults/Fault.ts';
import { capital } from '../../../text/format.ts';
import { has, say } from '../../../text/translate.ts';
import { Dialog } from '../../panels/Dialog.tsx';
import { ITEM_GROUPS } from '../../panels/itemGroups.ts';

interface FaultPickerProps {
  /** Those of the rig. */
  readonly faults: readonly FaultEntry[];
  readonly chosen: readonly unknown[];
  readonly onPick: (fault: string) => void;
  readonly onClose: () => void;
}

/** Every fault that can be there when a job begins, by the item that it sits in. */
export function FaultPicker({ faults, chosen, onPick, onClose }: FaultPickerProps) {
  const words = useSignal('');
  const all = faultsWith(words.value, faults);
  return (
    <Dialog title={say('backRoom.pickFault')} onClose={onClose} wide>
      <div class="fault-filter">
        <label for="fault-filter">{say('backRoom.filterFaults')}</label>
        <input
          id="fault-filter"
          type="search"
          autocomplete="off"
          placeholder={say('backRoom.filterHint')}
          value={words.value}
          onInput={(event) => {
            words.value = event.currentTarget.value;
          }}
        />
        <span class="quiet" role="status">
          {words.value.trim() === ''
            ? ''
            : all.length === 0
              ? say('backRoom.noFaultFound')
              : say('backRoom.faultsFound', { count: all.length })}
        </span>
      </div>
      <div class="fault-groups">
        {ITEM_GROUPS.filter(
          ({ group, items }) => group !== 'none' && all.some(({ item }) => items.includes(item)),
        ).map(({ group, items }) => (
          <section key={group}>
            <h3>{say(`itemGroups.${group}`)}</h3>
            {items.map((item) => {
              const faults = all.filter((fault) => fault.item === item);
              if (faults.length === 0) return null;
              return (
                <div key={item} class="fault-item">
                  <h4>{capital(say(`items.${item}`))}</h4>
                  <ul>
                    {faults.map(({ id }) => (
                      <li key={id}>
                        <button
                          type="button"
                          class="fault-pick"
                          disabled={chosen.includes(id)}
                          onClick={() => onPick(id)}
                        >
                          {faultSentence(id)}
                        </button>
                      </li>
                    ))}
                  </ul>
                </div>
              );
            })}
          </section>
        ))}
      </div>
    </Dialog>
  );
}

/** Those whose sentence, or whose item, has all the words that were typed, with or without their accents. */
export function faultsWith(words: string, faults: readonly FaultEntry[]): readonly FaultEntry[] {
  const wanted = plain(words).split(/\s+/);
  return faults.filter(({ id, item }) => {
    const said = plain(`${faultSentence(id)} ${say(`items.${item}`)}`);
    return wanted.every((word) => said.includes(word));
  });
}

function plain(words: string): string {
  return words.trim().toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '');
}

/** A fault as the debrief says it. One that this version has no words for goes by its name. */
export function faultSentence(fault: string): string {
  const key = `faults.${fault}`;
  return has(key) ? say(key) : fault;
}
