import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { fixed } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { bookMinutes } from '../../training/sitting/book.ts';
import type { Desk } from './Desk.ts';
import { Dialog } from './Dialog.tsx';
import { DriveReportView } from './DriveReportView.tsx';
import { Remarks } from './Remarks.tsx';
import { notAsOnTruck, toolsOnTruck } from './roadNeeds.ts';

const LEAST_CYCLES = 1;
const MOST_CYCLES = 10;

/** The road test: what must be true, how far, and what the drive showed. */
export function RoadTestDialog({ desk, onClose }: { readonly desk: Desk; readonly onClose: () => void }) {
  const cycles = useSignal(2);
  const driving = useSignal(false);
  const back = useSignal(0);
  const report = useRef<HTMLHeadingElement>(null);
  // What the drive showed is what comes next, for keys and screen reader too.
  const drives = back.value;
  useEffect(() => {
    if (drives === 0) return;
    report.current?.focus({ preventScroll: true });
    report.current?.scrollIntoView();
  }, [drives]);
  const seen = desk.observation.value;
  const tools = toolsOnTruck(seen);
  const ready = seen.key === 'off' && tools.length === 0;
  const minutes = bookMinutes({ kind: 'road-test', cycles: cycles.value });
  const turn = (by: number): void => {
    cycles.value = Math.min(MOST_CYCLES, Math.max(LEAST_CYCLES, cycles.value + by));
  };
  const drive = (): void => {
    if (driving.peek()) return;
    driving.value = true;
    void desk.roadTest(cycles.value).then((refusal) => {
      driving.value = false;
      if (refusal === null) back.value += 1;
    });
  };
  return (
    <Dialog title={say('roadTest.title')} onClose={onClose} wide>
      <div class="road-form">
        <div>
          <p>{say('roadTest.lead')}</p>
          <h3>{say('roadTest.needs')}</h3>
          <ul class="needs">
            <Need met={seen.key === 'off'} words={say('roadTest.keyOff')} />
            <Need met={tools.length === 0} words={say('roadTest.toolsOff')} />
          </ul>
          <Remarks title={say('roadTest.stillOn')} remarks={tools} />
          <Remarks title={say('roadTest.asItStands')} remarks={notAsOnTruck(seen)} />
        </div>
        <div class="road-go">
          <fieldset class="stepper">
            <legend>{say('roadTest.cycles')}</legend>
            <button
              type="button"
              aria-label={say('roadTest.fewer')}
              disabled={cycles.value === LEAST_CYCLES}
              onClick={() => turn(-1)}
            >
              −
            </button>
            <output aria-live="polite">{cycles.value}</output>
            <button
              type="button"
              aria-label={say('roadTest.more')}
              disabled={cycles.value === MOST_CYCLES}
              onClick={() => turn(1)}
            >
              +
            </button>
          </fieldset>
          <p class="quiet">
            {say('roadTest.cost', { minutes: fixed(minutes, 0) })} {say('roadTest.costHint')}
          </p>
          <button
            type="button"
            class="act big"
            disabled={!ready}
            aria-disabled={driving.value}
            onClick={drive}
          >
            {driving.value ? say('roadTest.driving') : say('roadTest.go', { count: cycles.value })}
          </button>
        </div>
      </div>
      {seen.lastDrive !== null && (
        <DriveReportView report={seen.lastDrive} totalMiles={seen.miles} heading={report} />
      )}
    </Dialog>
  );
}

function Need({ met, words }: { readonly met: boolean; readonly words: string }) {
  return (
    <li class={met ? 'need-met' : 'need-open'}>
      <Tick made={met} />
      <span>
        {words}
        <span class="visually-hidden">: {say(met ? 'roadTest.met' : 'roadTest.notMet')}</span>
      </span>
    </li>
  );
}

/** A square of a list to go through: ticked, or still to be. */
function Tick({ made }: { readonly made: boolean }) {
  return (
    <svg class="need-tick" viewBox="0 0 20 20" aria-hidden="true">
      <rect x="2" y="2" width="16" height="16" rx="2" />
      {made && <path d="M5.5 10.5 L8.7 13.7 L14.5 6.5" />}
    </svg>
  );
}
