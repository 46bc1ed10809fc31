import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { OpenNewestLine } from '../../../src/app/backroom/proof/NewestClient.ts';
import type { NewestSaid } from '../../../src/app/backroom/proof/newest.ts';
import { ProofClient } from '../../../src/app/backroom/proof/ProofClient.ts';
import type { DraftText, ProofNews } from '../../../src/app/backroom/proof/proofSteps.ts';
import { ReadingsClient } from '../../../src/app/backroom/proof/ReadingsClient.ts';
import { createReader } from '../../../src/app/backroom/proof/readingSteps.ts';
import type { LineEnd } from '../../../src/app/workers/livingWorker.ts';
import type { ReadBench, TestReadings } from '../../../src/training/proof/FaultReadings.ts';
import type { ProofSoFar, ScenarioProof } from '../../../src/training/proof/ScenarioProof.ts';
import { isStale, shownProof } from '../../../src/ui/backroom/proof/shownProof.ts';

/** A line on which the test speaks of the task that was asked last. */
function line<Task, News>() {
  const asked: Task[] = [];
  let id = -1;
  let hear: (message: NewestSaid<News> | LineEnd) => void = () => {};
  const open: OpenNewestLine<Task, News> = (say) => {
    hear = say;
    return {
      post: (message) => {
        asked.push(message.task);
        id = message.id;
      },
      hangUp: () => {},
    };
  };
  return {
    open,
    asked,
    tell: (news: News) => hear({ kind: 'news', id, news }),
    done: () => hear({ kind: 'done', id }),
    stop: () => hear({ kind: 'stopped', id, failure: { code: 'no-tables', detail: '404' } }),
  };
}

const NONE = { stored: [], pending: [] };
const CODES = { stated: { stored: ['P0456'], pending: [] }, held: NONE };
const PLAN = { minutes: 60 } as ProofSoFar['plan'];
const soFar = (known: Partial<ProofSoFar>): ProofSoFar => ({
  scenario: 'draft',
  codes: null,
  plan: null,
  learners: [],
  findings: [],
  ...known,
});
const SCORES = { learner: 'careful', median: 95, lower: 95, upper: 95, rightShare: 1 } as const;
const PROOF = {
  ...PLAN,
  scenario: 'draft',
  codes: CODES,
  learners: [SCORES],
  findings: [],
  fit: true,
} as unknown as ScenarioProof;

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

describe('the proof of a draft as the page follows it', () => {
  it('is worked out when the typing rests, step by step to its end', () => {
    const { open, asked, tell } = line<DraftText, ProofNews>();
    const client = new ProofClient(open, 300);
    expect(client.state.value).toEqual({ kind: 'nothing' });
    client.prove('a', 'a.yaml');
    client.prove('ab', 'a.yaml');
    expect(client.state.value).toEqual({ kind: 'proving', soFar: null, before: null });
    vi.advanceTimersByTime(300);
    expect(asked).toEqual([{ text: 'ab', file: 'a.yaml' }]);
    tell({ kind: 'so-far', soFar: soFar({ codes: CODES }) });
    expect(client.state.value).toMatchObject({ kind: 'proving', soFar: { codes: CODES } });
    tell({ kind: 'proved', proof: PROOF });
    expect(client.state.value).toEqual({ kind: 'proved', proof: PROOF });
  });

  it('keeps what it knew of the draft before until the new one says otherwise, marked as what it is', () => {
    const { open, tell } = line<DraftText, ProofNews>();
    const client = new ProofClient(open, 300);
    client.prove('a', '');
    vi.advanceTimersByTime(300);
    tell({ kind: 'proved', proof: PROOF });
    client.prove('b', '');
    vi.advanceTimersByTime(300);
    const shown = () => shownProof(client.state.value);
    expect(shown()).toMatchObject({
      codes: { is: CODES, stale: true },
      plan: { stale: true },
      learners: { is: [SCORES], stale: true },
    });
    tell({ kind: 'so-far', soFar: soFar({ codes: { stated: NONE, held: NONE } }) });
    expect(shown()).toMatchObject({ codes: { is: { stated: NONE }, stale: false }, plan: { stale: true } });
    // A third draft before the second was proved: what is known of the first plan still stands.
    client.prove('c', '');
    expect(shown()).toMatchObject({ codes: { is: CODES, stale: true }, plan: { stale: true } });
    vi.advanceTimersByTime(300);
    tell({ kind: 'proved', proof: PROOF });
    const last = shown();
    expect(last !== null && isStale(last)).toBe(false);
  });

  it('takes the same text for no news, and says what is wrong with one that cannot be read', () => {
    const { open, asked, tell } = line<DraftText, ProofNews>();
    const client = new ProofClient(open, 300);
    client.prove('a', '');
    vi.advanceTimersByTime(300);
    tell({ kind: 'broken', problems: [] });
    client.prove('a', '');
    vi.advanceTimersByTime(300);
    expect(asked.length).toBe(1);
    expect(client.state.value).toEqual({ kind: 'broken', problems: [] });
    expect(shownProof(client.state.value)).toBeNull();
  });

  it('tells a failure, and begins anew when asked or when something was written', () => {
    const { open, asked, stop } = line<DraftText, ProofNews>();
    const client = new ProofClient(open, 300);
    client.prove('a', '');
    vi.advanceTimersByTime(300);
    stop();
    expect(client.state.value).toEqual({ kind: 'failed', failure: { code: 'no-tables', detail: '404' } });
    client.again();
    expect(asked.length).toBe(2);
    stop();
    client.prove('a', '');
    vi.advanceTimersByTime(300);
    expect(asked.length).toBe(3);
  });
});

describe('the readings of a bench as the page follows them', () => {
  const bench = (...severities: readonly number[]): ReadBench => ({
    environment: { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 },
    seed: 'here',
    faults: severities.map((severity) => ({ fault: 'capsule-torn', severity })),
  });
  const reading = (test: TestReadings['test'], telling: TestReadings['telling']): TestReadings => ({
    test,
    marks: [],
    telling,
  });

  it('come test by test; a second word on a test takes the place of the first', () => {
    const { open, tell, done } = line<ReadBench, TestReadings | null>();
    const client = new ReadingsClient(open, 40);
    client.read(bench(0.5));
    vi.advanceTimersByTime(40);
    tell(reading('hold-capped', 'tells'));
    tell(reading('coil-ohms', 'tells'));
    tell(reading('hold-capped', 'own-only'));
    done();
    expect(client.state.value).toEqual({
      kind: 'read',
      tests: [reading('hold-capped', 'own-only'), reading('coil-ohms', 'tells')],
    });
  });

  it('of the slider before stand until there are newer ones, and go where no fault is left', () => {
    const { open, asked, tell, done } = line<ReadBench, TestReadings | null>();
    const client = new ReadingsClient(open, 40);
    client.read(bench(0.5));
    vi.advanceTimersByTime(40);
    tell(reading('hold-capped', 'tells'));
    done();
    for (const severity of [0.6, 0.7, 0.8]) {
      client.read(bench(severity));
      vi.advanceTimersByTime(16);
    }
    vi.advanceTimersByTime(40);
    expect(asked.length).toBe(2);
    expect(client.state.value).toMatchObject({
      kind: 'reading',
      tests: [],
      before: [{ test: 'hold-capped' }],
    });
    client.read(bench());
    vi.advanceTimersByTime(40);
    // The good bench is read ahead, and shows nothing of it.
    tell(null);
    done();
    expect(asked.at(-1)?.faults).toEqual([]);
    expect(client.state.value).toEqual({ kind: 'nothing' });
  });
});

describe('the reader of the worker', () => {
  it('works the good bench once as long as only the faults change', async () => {
    vi.useRealTimers();
    const read = createReader();
    const bench = (fault: string, seed: string): ReadBench => ({
      environment: { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 },
      seed,
      faults: [{ fault, severity: 0 }],
    });
    const first = async (one: ReadBench): Promise<TestReadings | null> => {
      for await (const news of read(one)) return news;
      return null;
    };
    const one = await first(bench('fuse-blown', 'a'));
    const again = await first(bench('fuse-blown', 'a'));
    // The very same readings, not like ones: they were kept.
    expect(again?.marks[0]?.good[0]).toBe(one?.marks[0]?.good[0]);
    expect(again?.marks[0]?.faulted[0]).not.toBe(one?.marks[0]?.faulted[0]);
    const other = await first(bench('fuse-blown', 'b'));
    expect(other?.marks[0]?.good[0]).not.toBe(one?.marks[0]?.good[0]);
  });
});
