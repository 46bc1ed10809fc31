import { type CoachWords, coachWords } from '../../text/coachWords.ts';
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
      <div class="coach-answer" aria-busy={state.kind === 'thinking'}>
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

/** What it said is told as it comes; the steps are there to be read, and that an advice has aged is no news. */
function Answer({ state, newest }: { readonly state: CoachState; readonly newest: number }) {
  const words = state.kind === 'says' ? coachWords(state.advice, state.depth, testSheet) : null;
  return (
    <>
      {state.kind === 'says' && newest > state.entries && (
        <p class="coach-stale">
          <b>{say('coach.stale', { entry: state.entries + 1 })}</b> {say('coach.staleHow')}
        </p>
      )}
      <div role="status">
        {words === null ? (
          <p class="quiet">{say(state.kind === 'thinking' ? 'coach.thinking' : 'coach.silent')}</p>
        ) : (
          <Said words={words} depth={state.kind === 'says' ? state.depth : 'question'} />
        )}
      </div>
      {words?.parts.map((part) => (
        <Part key={part.heading} part={part} />
      ))}
    </>
  );
}

function Said({ words, depth }: { readonly words: CoachWords; readonly depth: CoachDepth }) {
  return (
    <>
      <h3>{words.title ?? say(`coach.answer.${depth}`)}</h3>
      {words.says.map((sentence) => (
        <p key={sentence} class={depth === 'question' ? 'coach-question' : ''}>
          {keepUnits(sentence)}
        </p>
      ))}
    </>
  );
}

function Part({ part: { heading, lines, ordered } }: { readonly part: CoachWords['parts'][number] }) {
  const List = ordered ? 'ol' : 'ul';
  return (
    <section>
      <h4>{heading}</h4>
      <List>
        {lines.map((line, i) => (
          <li key={i} class={line.startsWith('  ') ? 'coach-within' : ''}>
            {keepUnits(line.trim())}
          </li>
        ))}
      </List>
    </section>
  );
}
