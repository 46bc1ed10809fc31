import { useSignal } from '@preact/signals';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { SittingAction, VerdictItem } from '../../training/sitting/SittingAction.ts';
import { CiteChoice } from './CiteChoice.tsx';
import { toggledCite } from './cites.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { type ItemsOfGroup, itemGroupsOf } from './itemGroups.ts';
import { beginMark, type MarkDraft, markAction, takeBackAction } from './MarkDraft.ts';
import { MarkSign } from './MarkSign.tsx';

interface MarkDialogProps {
  readonly desk: Desk;
  /** The suspect to mark; null asks for it, with `from` as the entry to cite. */
  readonly item: VerdictItem | null;
  readonly from: number | null;
  readonly onClose: () => void;
}

/** Clears or convicts one suspect by entries of the log, or takes its mark back. */
export function MarkDialog({ desk, item, from, onClose }: MarkDialogProps) {
  const marks = desk.marks.value;
  const draft = useSignal(beginMark(marks, item, from));
  const { item: chosen, mark, cites } = draft.value;
  const change = (part: Partial<MarkDraft>): void => {
    draft.value = { ...draft.value, ...part };
  };
  const standing = marks.find((each) => each.item === chosen);
  const action = markAction(draft.value);
  const done = (doing: SittingAction): void => {
    if (desk.act(doing) === null) desk.tell(markedWords(doing));
    onClose();
  };
  const title =
    item === null
      ? say('suspects.citeTitle', { id: from ?? '' })
      : say('suspects.markTitle', { item: say(`items.${item}`) });
  return (
    <Dialog title={title} onClose={onClose} wide>
      <div class="mark-columns">
        <div>
          {item === null && (
            <ItemSelect
              groups={itemGroupsOf(desk.observation.peek().surface)}
              chosen={chosen}
              onChoose={(next) => {
                draft.value = beginMark(marks, next, from);
              }}
            />
          )}
          <MarkChoice mark={mark} onChoose={(next) => change({ mark: next })} />
          <p class="quiet">{say('suspects.carries')}</p>
        </div>
        <CiteChoice
          desk={desk}
          cited={cites}
          onToggle={(id) => change({ cites: toggledCite(cites, id) })}
          empty={say('suspects.noEntries')}
        />
      </div>
      <div class="dialog-foot">
        {standing !== undefined && (
          <button type="button" class="take-back" onClick={() => done(takeBackAction(standing.item))}>
            {say('suspects.takeBack')}
          </button>
        )}
        {action === null && (
          <span class="mark-now quiet" role="status">
            {say(chosen === null ? 'suspects.choose' : 'suspects.chooseMark')}
          </span>
        )}
        <button
          type="button"
          class="act"
          disabled={action === null}
          onClick={() => action !== null && done(action)}
        >
          {say('suspects.confirm')}
        </button>
      </div>
    </Dialog>
  );
}

/** What was done, for the caption. */
function markedWords(action: SittingAction): string {
  if (action.kind !== 'mark-item') return '';
  const item = capital(say(`items.${action.item}`));
  if (action.mark === 'open') return say('suspects.tookBack', { item });
  const mark = say(`boardMarks.${action.mark}`);
  if (action.cites.length === 0) return say('suspects.markedBare', { item, mark });
  return say('suspects.marked', { item, mark, count: action.cites.length, entries: action.cites.join(', ') });
}

interface ItemSelectProps {
  readonly groups: readonly ItemsOfGroup[];
  readonly chosen: VerdictItem | null;
  readonly onChoose: (item: VerdictItem) => void;
}

function ItemSelect({ groups, chosen, onChoose }: ItemSelectProps) {
  return (
    <label class="suspect-select">
      {say('suspects.which')}
      <select
        value={chosen ?? ''}
        onChange={(event) => {
          const value = event.currentTarget.value;
          const item = groups.flatMap(({ items }) => items).find((each) => each === value);
          if (item !== undefined) onChoose(item);
        }}
      >
        <option value="" disabled>
          {say('suspects.choose')}
        </option>
        {groups.map(({ group, items }) => (
          <optgroup key={group} label={say(`itemGroups.${group}`)}>
            {items.map((id) => (
              <option key={id} value={id}>
                {capital(say(`items.${id}`))}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}

const MARKS = ['cleared', 'convicted'] as const;

interface MarkChoiceProps {
  readonly mark: MarkDraft['mark'];
  readonly onChoose: (mark: (typeof MARKS)[number]) => void;
}

function MarkChoice({ mark, onChoose }: MarkChoiceProps) {
  return (
    <fieldset class="mark-choice">
      <legend>{say('suspects.mark')}</legend>
      {MARKS.map((each) => (
        <label key={each} class={`mark-option suspect-${each}`}>
          <input type="radio" name="board-mark" checked={mark === each} onChange={() => onChoose(each)} />
          <MarkSign mark={each} />
          <span>
            <b>{capital(say(`boardMarks.${each}`))}</b>
            <span class="mark-meaning">{say(`suspects.means.${each}`)}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
