import { useSignal } from '@preact/signals';
import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { describeMode } from '../../text/describeMode.ts';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { modesOf } from '../../training/evidence/modesOf.ts';
import { MAX_CITATIONS } from '../../training/sitting/mayAct.ts';
import type { VerdictItem } from '../../training/sitting/SittingAction.ts';
import { CiteChoice } from './CiteChoice.tsx';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { type ItemsOfGroup, itemGroupsOf } from './itemGroups.ts';
import {
  asksMode,
  beginVerdict,
  isFromBoard,
  type VerdictDraft,
  verdictAction,
  withCite,
  withItem,
} from './VerdictDraft.ts';

/** Name the bad item, say what is wrong with it, cite the proof, be asked once, then locked. */
export function VerdictDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const draft = useSignal(beginVerdict(desk.marks.value));
  const asking = useSignal(false);
  const { item, answer, cites } = draft.value;
  const { surface } = desk.observation.peek();
  const verdict = verdictAction(draft.value);
  if (asking.value && verdict !== null) {
    return (
      <LockDialog desk={desk} verdict={verdict} onBack={() => (asking.value = false)} onClose={onClose} />
    );
  }
  return (
    <Dialog title={say('verdict.title')} onClose={onClose} wide>
      <p>{say('verdict.lead')}</p>
      <div class="verdict-columns">
        <ItemChoice
          groups={itemGroupsOf(surface)}
          chosen={item}
          onChoose={(id) => (draft.value = withItem(draft.value, id, desk.marks.value))}
        />
        <ModeChoice
          rig={surface.rig}
          item={item}
          answer={answer}
          onAnswer={(mode) => (draft.value = { ...draft.value, answer: { mode } })}
        />
        <div class="verdict-proof">
          <CiteChoice
            desk={desk}
            cited={cites}
            onToggle={(id) => (draft.value = withCite(draft.value, id))}
            empty={say('verdict.noEntries')}
          />
          {isFromBoard(draft.value) && <p class="quiet from-board">{say('verdict.fromBoard')}</p>}
        </div>
      </div>
      <div class="dialog-foot">
        <span class="verdict-now" role="status">
          <VerdictSoFar draft={draft.value} />
        </span>
        <button type="button" class="act" disabled={verdict === null} onClick={() => (asking.value = true)}>
          {say('verdict.next')}
        </button>
      </div>
    </Dialog>
  );
}

/** What is chosen, or what is still to choose. */
function VerdictSoFar({ draft }: { readonly draft: VerdictDraft }) {
  const { item, answer, cites } = draft;
  if (item === null) return <>{say('verdict.chooseItem')}</>;
  if (verdictAction(draft) === null) {
    return (
      <>
        {capital(say(`items.${item}`))}. <span class="quiet">{say('verdict.chooseMode')}</span>
      </>
    );
  }
  return (
    <>
      {capital(say(`items.${item}`))}{' '}
      <span class="quiet">
        {answer !== null && `· ${describeMode(item, answer.mode)} `}·{' '}
        {say('verdict.cites', { count: cites.length, max: MAX_CITATIONS })}
      </span>
    </>
  );
}

interface ItemChoiceProps {
  readonly groups: readonly ItemsOfGroup[];
  readonly chosen: VerdictItem | null;
  readonly onChoose: (item: VerdictItem) => void;
}

function ItemChoice({ groups, chosen, onChoose }: ItemChoiceProps) {
  return (
    <fieldset class="verdict-items">
      <legend>{say('verdict.item')}</legend>
      <div class="verdict-groups">
        {groups.map(({ group, items }) => (
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
                <span>{say(`items.${id}`)}</span>
              </label>
            ))}
          </div>
        ))}
      </div>
    </fieldset>
  );
}

interface ModeChoiceProps {
  readonly rig: RigId;
  readonly item: VerdictItem | null;
  readonly answer: VerdictDraft['answer'];
  readonly onAnswer: (mode: string | null) => void;
}

/** What is wrong with the item: everything the catalogue knows of it, and 'I cannot say'. */
function ModeChoice({ rig, item, answer, onAnswer }: ModeChoiceProps) {
  return (
    <fieldset class="verdict-modes">
      <legend>{say('verdict.mode')}</legend>
      {item === null || !asksMode(item) ? (
        <p class="quiet">{say(item === null ? 'verdict.modeLater' : 'verdict.noMode')}</p>
      ) : (
        [...modesOf(item, rig), null].map((mode) => (
          <label key={`${item} ${mode ?? ''}`}>
            <input
              type="radio"
              name="verdict-mode"
              checked={answer !== null && answer.mode === mode}
              onChange={() => onAnswer(mode)}
            />
            <span>{describeMode(item, mode)}</span>
          </label>
        ))
      )}
    </fieldset>
  );
}

interface LockDialogProps {
  readonly desk: Desk;
  readonly verdict: NonNullable<ReturnType<typeof verdictAction>>;
  readonly onBack: () => void;
  readonly onClose: () => void;
}

function LockDialog({ desk, verdict, onBack, onClose }: LockDialogProps) {
  const lock = (): void => {
    if (desk.act(verdict) === null) {
      desk.tell(say('verdict.locked', { item: say(`theItems.${verdict.item}`) }));
    }
    onClose();
  };
  return (
    <Dialog title={say('verdict.ask')} onClose={onClose} asks>
      <p>
        <b>{namedWords(verdict)}</b>
      </p>
      <p>
        {say('verdict.youCite', { count: verdict.cites.length })} {say('verdict.isFinal')}
      </p>
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

/** What a verdict names, with what is said to be wrong with it. */
function namedWords({ item, mode }: LockDialogProps['verdict']): string {
  const named = { item: say(`theItems.${item}`) };
  if (mode !== null) return say('verdict.youNameMode', { ...named, mode: describeMode(item, mode) });
  return say(asksMode(item) ? 'verdict.youNameBlind' : 'verdict.youName', named);
}
