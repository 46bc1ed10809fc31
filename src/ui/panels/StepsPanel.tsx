import { type Signal, useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { jobSentence } from '../../text/jobWords.ts';
import { say } from '../../text/translate.ts';
import { isJob } from '../../training/scenario/modes.ts';
import type { WalkthroughStep } from '../../training/sitting/SittingView.ts';
import type { Desk } from './Desk.ts';
import { firstSentence } from './firstSentence.ts';
import { InsideFold } from './InsideFold.tsx';
import { JobWords } from './JobWords.tsx';
import { foldSteps } from './stepFold.ts';

interface StepsProps {
  readonly desk: Desk;
  /** Whether the unit is shown cut open; kept by the column, so that it stays as it was left. */
  readonly insideOpen: Signal<boolean>;
  /** What stands in the place of the present step when all are done. */
  readonly end: ComponentChildren;
}

/** The steps of a walkthrough: the one to do now and how, a look ahead, and everything else folded away. */
export function StepsPanel({ desk, insideOpen, end }: StepsProps) {
  const { steps } = desk.card;
  const fold = foldSteps(desk.step.value, steps.length);
  const passedOver = desk.passedOver.value;
  // With the unit cut open there is room for the present step and the drawing, and for nothing else.
  const ahead = !insideOpen.value;
  const { now } = fold;
  const current = useRef<HTMLLIElement>(null);
  useEffect(() => keepInView(current.current), [now]);
  const step = now === null ? undefined : steps[now];
  return (
    <div class="steps">
      <p class="quiet steps-progress" role="status">
        {now === null
          ? say(isJob(desk.card.mode) ? 'steps.allDone' : 'introduction.allDone')
          : say('steps.progress', { now: now + 1, all: steps.length })}
      </p>
      {fold.done.length > 0 && (
        <Folded title={doneTitle(fold.done.length, passedOver.length)} from={0}>
          {fold.done.map((index) => (
            <li key={index} class="step-done">
              <JobWords of={steps[index]?.say ?? ''} />
              <span class="tag">
                {passedOver.includes(index) ? `→ ${say('steps.passedOver')}` : `✓ ${say('steps.done')}`}
              </span>
            </li>
          ))}
        </Folded>
      )}
      {step === undefined || now === null ? (
        end
      ) : (
        <ol class="steps-ahead" start={now + 1}>
          <li key={step.id} ref={current} class="step-now" aria-current="step">
            <p class="step-say">
              <JobWords of={step.say} />
            </p>
            <p class="step-how">
              <JobWords of={step.how} />
            </p>
            <button type="button" class="plain step-skip" onClick={() => skip(desk)}>
              {say('steps.skip')}
            </button>
          </li>
          {ahead &&
            fold.next.map((index) => (
              <li key={index} class="step-next">
                <Glimpse of={steps[index]} />
              </li>
            ))}
        </ol>
      )}
      {ahead && fold.rest.length > 0 && (
        <Folded title={say('steps.rest', { count: fold.rest.length })} from={fold.rest[0] ?? 0}>
          {fold.rest.map((index) => (
            <li key={index} class="step-later">
              <JobWords of={steps[index]?.say ?? ''} />
            </li>
          ))}
        </Folded>
      )}
      <InsideFold desk={desk} open={insideOpen} />
    </div>
  );
}

interface FoldedProps {
  readonly title: string;
  /** Index of the first step in it. */
  readonly from: number;
  readonly children: ComponentChildren;
}

/** A list of steps behind one line. What is folded away is not in the page: fifty steps are long to draw and longer to hear. */
function Folded({ title, from, children }: FoldedProps) {
  const open = useSignal(false);
  return (
    <details class="steps-fold" onToggle={(event) => (open.value = event.currentTarget.open)}>
      <summary>{title}</summary>
      {open.value && <ol start={from + 1}>{children}</ol>}
    </details>
  );
}

function Glimpse({ of: step }: { readonly of: WalkthroughStep | undefined }) {
  if (step === undefined) return null;
  const { words, lang } = jobSentence(step.say);
  return <span lang={lang}>{firstSentence(words)}</span>;
}

function doneTitle(gone: number, passedOver: number): string {
  const done = `✓ ${say('steps.doneCount', { count: gone - passedOver })}`;
  const over = `→ ${say('steps.passedOverCount', { count: passedOver })}`;
  if (passedOver === 0) return done;
  return passedOver === gone ? over : `${done}, ${over}`;
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
