import type { ReadonlySignal } from '@preact/signals';
import { say } from '../../../text/translate.ts';
import type { Telling, TestReadings } from '../../../training/proof/FaultReadings.ts';
import { FailureLine } from '../proof/FailureLine.tsx';
import { SaidOnceSettled } from '../SaidOnceSettled.tsx';
import type { ReadingsState } from './ReadingsState.ts';
import { ReadingsTable } from './ReadingsTable.tsx';
import './readings.css';

interface FaultReadingsProps {
  readonly state: ReadonlySignal<ReadingsState>;
  /** Begins anew after a failure. */
  readonly again: () => void;
}

/**
 * What the standard tests would read with the faults as they are set, beside what they read without them: those that tell the
 * difference open, the others folded.
 */
export function FaultReadings({ state, again }: FaultReadingsProps) {
  const now = state.value;
  return (
    <section class="readings" aria-labelledby="readings-title" aria-busy={now.kind === 'reading'}>
      <h3 id="readings-title">{say('readings.title')}</h3>
      <Settled state={now} />
      {now.kind === 'nothing' && <p class="quiet">{say('readings.nothing')}</p>}
      {now.kind === 'failed' && <FailureLine failure={now.failure} again={again} />}
      {(now.kind === 'reading' || now.kind === 'read') && <Shown state={now} />}
    </section>
  );
}

type Reading = Extract<ReadingsState, { kind: 'reading' | 'read' }>;

function Shown({ state }: { readonly state: Reading }) {
  const tests = newestOf(state);
  const of = (telling: Telling): readonly TestReadings[] => tests.filter((one) => one.telling === telling);
  const tells = of('tells');
  const read = state.kind === 'read';
  return (
    <>
      <p class="readings-so-far">
        {tells.length > 0 || !read
          ? read
            ? say('readings.tells', { count: tells.length })
            : say('readings.workingOf', { done: state.tests.length })
          : say('readings.tellsNone')}
        {read && tells.length === 0 && <span class="readings-fix"> {say('readings.tellsNoneFix')}</span>}
      </p>
      {tells.length > 0 && <ReadingsTable tests={tells} stale={isStale(state)} />}
      <Fold title="readings.ownOnly" tests={of('own-only')} />
      {read && <Names tests={of('same')} />}
    </>
  );
}

/** The newest readings in the order they came, then those of the faults before that have not been worked anew. */
function newestOf(state: Reading): readonly TestReadings[] {
  if (state.kind === 'read') return state.tests;
  const done = new Set(state.tests.map(({ test }) => test));
  return [...state.tests, ...state.before.filter(({ test }) => !done.has(test))];
}

function isStale(state: Reading): (test: TestReadings) => boolean {
  if (state.kind === 'read') return () => false;
  const done = new Set(state.tests);
  return (test) => !done.has(test);
}

interface FoldProps {
  readonly title: 'readings.ownOnly';
  readonly tests: readonly TestReadings[];
}

function Fold({ title, tests }: FoldProps) {
  if (tests.length === 0) return null;
  return (
    <details class="readings-fold">
      <summary>{say(title, { count: tests.length })}</summary>
      <ReadingsTable tests={tests} stale={() => false} />
    </details>
  );
}

function Names({ tests }: { readonly tests: readonly TestReadings[] }) {
  if (tests.length === 0) return null;
  return (
    <details class="readings-fold">
      <summary>{say('readings.same', { count: tests.length })}</summary>
      <ul class="readings-names">
        {tests.map(({ test }) => (
          <li key={test}>{say(`standardTests.list.${test}.name`)}</li>
        ))}
      </ul>
    </details>
  );
}

/** Rows come many a second; whoever listens hears of the last one only, when the slider has been let alone for a while. */
const SAID_AFTER_MS = 800;

function Settled({ state }: { readonly state: ReadingsState }) {
  const sentence =
    state.kind === 'read'
      ? say('readings.settled', {
          count: state.tests.filter(({ telling }) => telling === 'tells').length,
          all: state.tests.length,
        })
      : '';
  return <SaidOnceSettled sentence={sentence} afterMs={SAID_AFTER_MS} />;
}
