import type { ReadonlySignal } from '@preact/signals';
import { say } from '../../../text/translate.ts';
import type { Telling, TestReadings } from '../../../training/proof/FaultReadings.ts';
import { plainestFirst } from '../../../training/proof/plainest.ts';
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
      {tells.length > 0 && <ReadingsTable tests={tells.slice(0, FIRST)} stale={isStale(state)} />}
      <Fold title="readings.furtherTells" tests={tells.slice(FIRST)} stale={isStale(state)} />
      <Fold title="readings.ownOnly" tests={of('own-only')} stale={() => false} />
      {read && <Names tests={of('same')} />}
    </>
  );
}

/** Of the tests that give it away so many are shown at once: the plainest. */
const FIRST = 5;

/**
 * The plainest first. While a slider moves each test keeps the place it had, and shows the newest it has read; those that were not there
 * before follow as they come.
 */
function newestOf(state: Reading): readonly TestReadings[] {
  if (state.kind === 'read') return plainestFirst(state.tests);
  const newest = new Map(state.tests.map((test) => [test.test, test]));
  const before = plainestFirst(state.before);
  const known = new Set(before.map(({ test }) => test));
  return [
    ...before.map((test) => newest.get(test.test) ?? test),
    ...state.tests.filter(({ test }) => !known.has(test)),
  ];
}

function isStale(state: Reading): (test: TestReadings) => boolean {
  if (state.kind === 'read') return () => false;
  const done = new Set(state.tests);
  return (test) => !done.has(test);
}

interface FoldProps {
  readonly title: 'readings.ownOnly' | 'readings.furtherTells';
  readonly tests: readonly TestReadings[];
  readonly stale: (test: TestReadings) => boolean;
}

function Fold({ title, tests, stale }: FoldProps) {
  if (tests.length === 0) return null;
  return (
    <details class="readings-fold">
      <summary>{say(title, { count: tests.length })}</summary>
      <ReadingsTable tests={tests} stale={stale} />
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
