import { useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { isAtHand } from '../../training/scenario/benchTools.ts';
import type { Desk } from './Desk.ts';
import { UndoButton } from './UndoButton.tsx';

interface HandBarProps {
  readonly desk: Desk;
  /** What is held now, in words; null with an empty hand. */
  readonly held: string | null;
  /** Whether single letters are shortcuts. */
  readonly letters: boolean;
  readonly onShortcuts: () => void;
  readonly onUndo: () => void;
}

const STROKES = [
  { depth: 1, label: 'hand.strokeFull', short: 'hand.strokeFull' },
  { depth: 0.5, label: 'hand.strokeHalf', short: 'hand.half' },
  { depth: 0.25, label: 'hand.strokeQuarter', short: 'hand.quarter' },
] as const;

/** Under the bench: what the bench last had to say, the pump by single strokes, and time. */
export function HandBar({ desk, held, letters, onShortcuts, onUndo }: HandBarProps) {
  const caption = desk.caption.value;
  // What is held is said until the bench has something newer to say: an eye stays in the hand, and finds things.
  const since = useRef({ held, id: caption.id });
  if (since.current.held !== held) since.current = { held, id: caption.id };
  const news = held === null || caption.id !== since.current.id;
  // What happened takes the place of what was said when it did: "Red lead placed on …" is no news beside a melted fuse.
  const event = desk.event.value;
  const over = event !== null && caption.id <= event.after;
  const tone = over ? 'refusal' : news ? caption.tone : 'held';
  return (
    <div class="hand-bar">
      <div class="caption-room">
        <p class={`caption caption-${tone}`} role="status" aria-atomic="true">
          {/* Events are spoken by the bench itself. */}
          {event !== null && <b aria-hidden="true">{event.sentence} </b>}
          <span key={caption.id} class={over ? 'visually-hidden' : ''}>
            {news ? caption.sentence : held}
          </span>
        </p>
      </div>
      <div class="hand-keys">
        <UndoButton desk={desk} holding={held !== null} onUndo={onUndo} />
        {isAtHand(desk.card.tools, 'hand-pump') && (
          <fieldset class="strokes">
            <legend class="visually-hidden">{say('groups.pump')}</legend>
            {STROKES.map(({ depth, label, short }) => (
              <button
                key={depth}
                type="button"
                aria-label={say(label)}
                onClick={() => desk.act({ kind: 'stroke', depth })}
              >
                {say(short)}
              </button>
            ))}
          </fieldset>
        )}
        <fieldset class="strokes">
          <legend class="visually-hidden">{say('waiting.label')}</legend>
          <button type="button" onClick={() => desk.wait(10)}>
            {say('waiting.ten')}
          </button>
          <button type="button" aria-label={say('waiting.steadyName')} onClick={() => desk.waitSteady()}>
            {say('waiting.steady')}
          </button>
        </fieldset>
        <button
          type="button"
          class="plain help"
          aria-label={say(letters ? 'bench.shortcuts' : 'bench.shortcutsPlain')}
          title={say(letters ? 'bench.shortcuts' : 'bench.shortcutsPlain')}
          onClick={onShortcuts}
        >
          ?
        </button>
      </div>
    </div>
  );
}
