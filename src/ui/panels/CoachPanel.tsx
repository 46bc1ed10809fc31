import { coachWords } from '../../text/coachWords.ts';
import { say } from '../../text/translate.ts';
import { testSheet } from '../../training/coach/testSheet.ts';
import { COACH_DEPTHS, type CoachDepth } from '../../training/sitting/SittingAction.ts';
import type { CoachState, Desk } from './Desk.ts';
import { keepUnits } from './keepUnits.ts';

/** The coach beside the bench: three depths to ask for, and what it said. */
export function CoachPanel({ desk }: { readonly desk: Desk }) {
  const state = desk.coach.value;
  if (state.kind === 'off') return <p class="quiet">{say('coach.off')}</p>;
  const asked = 'depth' in state ? state.depth : null;
  return (
    <div class="coach">
      <p class="quiet">{say('coach.lead')}</p>
      <fieldset class="coach-ask" aria-label={say('coach.title')}>
        {COACH_DEPTHS.map((depth) => (
          <DepthButton
            key={depth}
            depth={depth}
            pressed={depth === asked}
            busy={state.kind === 'thinking'}
            onAsk={() => desk.askCoach(depth)}
          />
        ))}
      </fieldset>
      <p class="quiet coach-price">{say('coach.price')}</p>
      <div class="coach-answer" role="status" aria-busy={state.kind === 'thinking'}>
        <Answer state={state} newest={desk.log.value.at(-1)?.id ?? 0} />
      </div>
    </div>
  );
}

interface DepthButtonProps {
  readonly depth: CoachDepth;
  readonly pressed: boolean;
  readonly busy: boolean;
  readonly onAsk: () => void;
}

/** Stays in place and can take the focus while the coach is at work; it only does nothing then. */
function DepthButton({ depth, pressed, busy, onAsk }: DepthButtonProps) {
  return (
    <button
      type="button"
      class={pressed ? 'coach-depth coach-asked' : 'coach-depth'}
      aria-disabled={busy}
      onClick={() => {
        if (!busy) onAsk();
      }}
    >
      <span class="coach-steps" aria-hidden="true">
        {COACH_DEPTHS.map((step) => (
          <i key={step} class={COACH_DEPTHS.indexOf(step) <= COACH_DEPTHS.indexOf(depth) ? 'deep' : ''} />
        ))}
      </span>
      {say(`coach.ask.${depth}`)}
    </button>
  );
}

function Answer({ state, newest }: { readonly state: CoachState; readonly newest: number }) {
  switch (state.kind) {
    case 'off':
    case 'silent':
      return <p class="quiet">{say('coach.silent')}</p>;
    case 'thinking':
      return <p class="quiet coach-thinking">{say('coach.thinking')}</p>;
    case 'says': {
      const { title, says, parts } = coachWords(state.advice, state.depth, testSheet);
      return (
        <>
          {newest > state.entries && (
            <p class="coach-stale">
              <b>{say('coach.stale', { entry: state.entries + 1 })}</b> {say('coach.staleHow')}
            </p>
          )}
          <h3>{title ?? say(`coach.answer.${state.depth}`)}</h3>
          {says.map((sentence) => (
            <p key={sentence} class={state.depth === 'question' ? 'coach-question' : ''}>
              {keepUnits(sentence)}
            </p>
          ))}
          {parts.map(({ heading, lines }) => (
            <section key={heading}>
              <h4>{heading}</h4>
              <ol>
                {lines.map((line, i) => (
                  <li key={i} class={line.startsWith('  ') ? 'coach-within' : ''}>
                    {keepUnits(line.trim())}
                  </li>
                ))}
              </ol>
            </section>
          ))}
        </>
      );
    }
  }
}
