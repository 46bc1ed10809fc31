import { useSignal } from '@preact/signals';
import { describePuttingBack } from '../../text/describeUndo.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';

interface UndoButtonProps {
  readonly desk: Desk;
  readonly holding: boolean;
  readonly onUndo: () => void;
}

/**
 * Puts back what was done last. Its name says what that would be; with nothing to put back it says why, and keeps the focus, which a
 * button that cannot be pressed would lose. Whoever comes to it by keys sees the name too, until Esc.
 */
export function UndoButton({ desk, holding, onUndo }: UndoButtonProps) {
  const hushed = useSignal(false);
  const name = holding ? say('undo.held') : undoSentence(desk);
  return (
    <button
      type="button"
      class="undo"
      aria-disabled={!holding && desk.undoNext.value === null}
      title={name}
      onClick={onUndo}
      onFocus={() => {
        hushed.value = false;
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') hushed.value = true;
      }}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d="M9 5 4 10l5 5M4 10h10a6 6 0 0 1 0 12h-3" />
      </svg>
      <span aria-hidden="true">{say('undo.button')}</span>
      <span class={hushed.value ? 'visually-hidden' : 'undo-name'}>{name}</span>
    </button>
  );
}

function undoSentence(desk: Desk): string {
  const next = desk.undoNext.value;
  const why = desk.undoWhy.value;
  const reason = why === null ? null : say(`undo.reasons.${why}`);
  if (next === null) return `${say('undo.button')}. ${reason ?? say('undo.reasons.nothing-done')}`;
  const step = describePuttingBack(next);
  return reason === null || why === 'nothing-done'
    ? say('undo.next', { step })
    : say('undo.nextAfter', { reason, step });
}
