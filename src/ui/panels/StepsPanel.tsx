import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';

/** The steps of a walkthrough: what is done, what is to do now and how. */
export function StepsPanel({ desk }: { readonly desk: Desk }) {
  const { steps } = desk.card;
  const now = desk.step.value;
  const current = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (now >= 0) current.current?.scrollIntoView({ block: 'nearest' });
  }, [now]);
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
              {step.say}
              {index < now && <span class="tag">✓ {say('steps.done')}</span>}
            </span>
            {index === now && <p class="step-how">{step.how}</p>}
          </li>
        ))}
      </ol>
    </div>
  );
}
