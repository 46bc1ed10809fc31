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
export function FaultPicker({ faults: all, chosen, onPick, onClose }: FaultPickerProps) {
  return (
    <Dialog title={say('backRoom.pickFault')} onClose={onClose} wide>
      <div class="fault-groups">
        {ITEM_GROUPS.filter(({ group }) => group !== 'none').map(({ group, items }) => (
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

/** A fault as the debrief says it. One that this version has no words for goes by its name. */
export function faultSentence(fault: string): string {
  const key = `faults.${fault}`;
  return has(key) ? say(key) : fault;
}
