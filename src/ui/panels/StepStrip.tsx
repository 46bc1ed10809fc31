import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { JobWords } from './JobWords.tsx';

/**
 * The present step in short, over the bench: on a narrow screen the steps themselves lie below it, out of sight. Styles show it
 * there alone; who listens has the steps, so it is not said twice.
 */
export function StepStrip({ desk }: { readonly desk: Desk }) {
  const { steps } = desk.card;
  const now = desk.step.value;
  const step = steps[now];
  if (step === undefined) return null;
  return (
    <div class="step-strip" aria-hidden="true">
      <p class="strip-head">
        <b>{say('steps.progress', { now: now + 1, all: steps.length })}</b>{' '}
        <span>
          <JobWords of={step.say} />
        </span>
      </p>
      <JobWords of={step.how} />
    </div>
  );
}
