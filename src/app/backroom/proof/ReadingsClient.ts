import { workerUrl } from 'virtual:worker/src/app/backroom/proof/readingsWorker.ts';
import { type Signal, signal } from '@preact/signals';
import { say } from '../../../text/translate.ts';
import type { ReadBench, TestReadings } from '../../../training/proof/FaultReadings.ts';
import type { ReadingsState } from '../../../ui/backroom/readings/ReadingsState.ts';
import { openWorker } from '../../workers/livingWorker.ts';
import { NewestClient, type OpenNewestLine } from './NewestClient.ts';
import type { NewestAsked, NewestSaid } from './newest.ts';

/** A slider that is being dragged says where it is with every frame. */
const REST_MS = 40;

/** Has the standard tests worked on the bench with its faults and without them, and keeps what they show. */
export class ReadingsClient {
  readonly state: Signal<ReadingsState> = signal<ReadingsState>({ kind: 'nothing' });
  private readonly client: NewestClient<ReadBench, TestReadings | null>;

  constructor(openLine: OpenNewestLine<ReadBench, TestReadings | null> = workerLine, restMs = REST_MS) {
    this.client = new NewestClient<ReadBench, TestReadings | null>({
      openLine,
      restMs,
      // It keeps the readings of the good benches, and no test takes long.
      patienceMs: null,
      news: (news) => this.hear(news),
      done: () => {
        const state = this.state.peek();
        if (state.kind === 'reading') this.state.value = { kind: 'read', tests: state.tests };
      },
      failed: (failure) => {
        this.state.value = { kind: 'failed', failure };
      },
      gone: () => say('evidence.gone'),
    });
  }

  /** The bench as it is set now; with no fault on it there is nothing to be read, and the good bench is made ready. */
  read(bench: ReadBench): void {
    this.state.value =
      bench.faults.length === 0
        ? { kind: 'nothing' }
        : { kind: 'reading', tests: [], before: testsOf(this.state.peek()) };
    this.client.ask(bench);
  }

  /** After a failure. */
  again(): void {
    this.state.value = { kind: 'reading', tests: [], before: [] };
    this.client.again();
  }

  end(): void {
    this.client.end();
  }

  private hear(news: TestReadings | null): void {
    const state = this.state.peek();
    if (news === null || state.kind !== 'reading') return;
    this.state.value = { ...state, tests: withNewest(state.tests, news) };
  }
}

/** A test that was held against more good benches takes its own place. */
function withNewest(tests: readonly TestReadings[], news: TestReadings): readonly TestReadings[] {
  const there = tests.some(({ test }) => test === news.test);
  return there ? tests.map((one) => (one.test === news.test ? news : one)) : [...tests, news];
}

function testsOf(state: ReadingsState): readonly TestReadings[] {
  switch (state.kind) {
    case 'read':
      return state.tests;
    case 'reading':
      return state.tests.length > 0 ? state.tests : state.before;
    default:
      return [];
  }
}

const workerLine: OpenNewestLine<ReadBench, TestReadings | null> = (hear) =>
  openWorker<NewestAsked<ReadBench>, NewestSaid<TestReadings | null>>(workerUrl, 'readings', hear);
