import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { JobWords } from './JobWords.tsx';

/** The steps of a walkthrough: what is done, what is to do now and how, and the way past a step. */
export function StepsPanel({ desk }: { readonly desk: Desk }) {
  const { steps } = desk.card;
  const now = desk.step.value;
  const passedOver = desk.passedOver.value;
  const current = useRef<HTMLLIElement>(null);
  useEffect(() => keepInView(current.current), [now]);
  return (
    <div class="steps">
      <p class="quiet" role="status">
        {now >= steps.length
          ? say('steps.allDone')
          : say('steps.progress', { now: now + 1, all: steps.length })}
      </p>
      <ol>
        {steps.map((step, index) => (
          <li
            key={step.id}
            ref={index === now ? current : null}
            class={index < now ? 'step-done' : index === now ? 'step-now' : 'step-later'}
            {...(index === now ? { 'aria-current': 'step' as const } : {})}
          >
            <span class="step-say">
              <JobWords of={step.say} />
              {index < now && <StepTag over={passedOver.includes(index)} />}
            </span>
            {index === now && (
              <>
                <p class="step-how">
                  <JobWords of={step.how} />
                </p>
                <button type="button" class="plain step-skip" onClick={() => skip(desk)}>
                  {say('steps.skip')}
                </button>
              </>
            )}
          </li>
        ))}
      </ol>
    </div>
  );
}

function StepTag({ over }: { readonly over: boolean }) {
  return <span class="tag">{over ? `→ ${say('steps.passedOver')}` : `✓ ${say('steps.done')}`}</span>;
}

/** The button goes with its step, so the focus goes to the panel. */
function skip(desk: Desk): void {
  if (desk.act({ kind: 'skip-step' }) === null) document.getElementById('side-panel')?.focus();
}

/**
 * Shows the whole step, and again whenever the panel's room changes: a banner that comes with the step takes room from it.
 * Returns the way to stop.
 */
function keepInView(step: HTMLElement | null): (() => void) | undefined {
  const panel = step?.closest('[role="tabpanel"]');
  if (step === null || panel === null || panel === undefined) return undefined;
  // The panel alone: on a phone it is as long as its steps, and the page stays where the learner left it.
  const show = (): void => {
    const [room, place] = [panel.getBoundingClientRect(), step.getBoundingClientRect()];
    const [over, under] = [place.top - room.top, place.bottom - room.bottom];
    panel.scrollTop += over < 0 ? over : Math.max(0, Math.min(under, over));
  };
  show();
  const sized = new ResizeObserver(show);
  sized.observe(panel);
  sized.observe(step);
  return () => sized.disconnect();
}
