import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { NewestClient, type OpenNewestLine } from '../../../src/app/backroom/proof/NewestClient.ts';
import { NewestDesk, Stopped } from '../../../src/app/backroom/proof/NewestDesk.ts';
import type { NewestAsked, NewestSaid } from '../../../src/app/backroom/proof/newest.ts';
import type { LineEnd } from '../../../src/app/workers/livingWorker.ts';
import type { BackRoomFailure } from '../../../src/ui/backroom/proof/ProofState.ts';

/** A desk that counts to the number it is given, and rests only when the test lets it. */
function countingDesk() {
  const posted: NewestSaid<number>[] = [];
  let resting: (() => void)[] = [];
  const desk = new NewestDesk<number, number>({
    steps: async function* (to) {
      if (to < 0) throw new Stopped({ code: 'other-rig', detail: 'old' });
      for (let i = 1; i <= to; i++) yield i;
      if (to > 100) throw new Error('too far');
    },
    post: (message) => posted.push(message),
    rest: () => new Promise((resolve) => resting.push(resolve)),
  });
  /** Lets the desk go on until it has nothing to do. */
  const run = async (): Promise<void> => {
    for (let i = 0; i < 500; i++) {
      await Promise.resolve();
      const now = resting;
      resting = [];
      for (const go of now) go();
    }
  };
  const ask = (id: number, task: number) => void desk.hear({ kind: 'work', id, task });
  const news = () => posted.flatMap((one) => (one.kind === 'news' ? [[one.id, one.news]] : []));
  return { posted, run, ask, news };
}

describe('a desk that works on the newest task', () => {
  it('says that it has taken it, tells each step, and when it is done', async () => {
    const { posted, run, ask } = countingDesk();
    ask(1, 2);
    await run();
    expect(posted).toEqual([
      { kind: 'taken', id: 1 },
      { kind: 'news', id: 1, news: 1 },
      { kind: 'news', id: 1, news: 2 },
      { kind: 'done', id: 1 },
    ]);
  });

  it('lays down what it is at for a newer one, at the next step', async () => {
    const { posted, run, ask, news } = countingDesk();
    ask(1, 50);
    for (let i = 0; i < 10; i++) await Promise.resolve();
    expect(news()).toEqual([[1, 1]]);
    ask(2, 1);
    await run();
    expect(news()).toEqual([
      [1, 1],
      [2, 1],
    ]);
    expect(posted.filter(({ kind }) => kind === 'done')).toEqual([{ kind: 'done', id: 2 }]);
  });

  it('tells why it stopped, and works on the next task all the same', async () => {
    const { posted, run, ask } = countingDesk();
    ask(1, -1);
    await run();
    ask(2, 101);
    await run();
    ask(3, 1);
    await run();
    expect(posted.filter(({ kind }) => kind === 'stopped')).toEqual([
      { kind: 'stopped', id: 1, failure: { code: 'other-rig', detail: 'old' } },
      { kind: 'stopped', id: 2, failure: { code: 'broke', detail: 'too far' } },
    ]);
    expect(posted.at(-1)).toEqual({ kind: 'done', id: 3 });
  });
});

/** A client with lines that the test speaks on. */
function clientAt(patienceMs: number | null = 100) {
  const lines: {
    readonly posted: NewestAsked<string>[];
    readonly say: (message: NewestSaid<string> | LineEnd) => void;
    hungUp: boolean;
  }[] = [];
  const openLine: OpenNewestLine<string, string> = (say) => {
    const line = { posted: [] as NewestAsked<string>[], say, hungUp: false };
    lines.push(line);
    return { post: (message) => line.posted.push(message), hangUp: () => (line.hungUp = true) };
  };
  const heard: string[] = [];
  const failures: BackRoomFailure[] = [];
  const client = new NewestClient<string, string>({
    openLine,
    restMs: 500,
    patienceMs,
    news: (news) => heard.push(news),
    done: () => heard.push('done'),
    failed: (failure) => failures.push(failure),
    gone: () => 'gone without a word',
  });
  const tasks = () => lines.map(({ posted }) => posted.map(({ task }) => task));
  const idOf = (line: number): number => lines[line]?.posted.at(-1)?.id ?? -1;
  const say = (line: number, message: NewestSaid<string> | LineEnd) => lines[line]?.say(message);
  return { client, lines, tasks, heard, failures, idOf, say };
}

describe('the page’s end', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('waits until nothing newer comes, and asks for the newest alone', () => {
    const { client, lines, tasks } = clientAt();
    client.ask('a');
    vi.advanceTimersByTime(400);
    client.ask('ab');
    vi.advanceTimersByTime(400);
    expect(lines).toEqual([]);
    vi.advanceTimersByTime(100);
    expect(tasks()).toEqual([['ab']]);
  });

  it('hears nothing of an older task', () => {
    const { client, heard, idOf, say } = clientAt();
    client.ask('a');
    vi.advanceTimersByTime(500);
    const old = idOf(0);
    client.ask('b');
    say(0, { kind: 'news', id: old, news: 'of a' });
    say(0, { kind: 'done', id: old });
    vi.advanceTimersByTime(500);
    say(0, { kind: 'news', id: idOf(0), news: 'of b' });
    say(0, { kind: 'done', id: idOf(0) });
    expect(heard).toEqual(['of b', 'done']);
  });

  it('ends a worker that does not lay down the older task, and asks another one', () => {
    const { client, lines, tasks, heard, idOf, say } = clientAt(100);
    client.ask('long');
    vi.advanceTimersByTime(500);
    say(0, { kind: 'taken', id: idOf(0) });
    client.ask('newer');
    vi.advanceTimersByTime(500);
    expect(lines[0]?.hungUp).toBe(false);
    vi.advanceTimersByTime(100);
    expect(lines[0]?.hungUp).toBe(true);
    expect(tasks()).toEqual([['long', 'newer'], ['newer']]);
    say(0, { kind: 'news', id: idOf(0), news: 'from the grave' });
    say(1, { kind: 'news', id: idOf(1), news: 'here' });
    expect(heard).toEqual(['here']);
  });

  it('leaves it alone where it takes the newer one up in time, and where it has nothing in hand', () => {
    const { client, lines, idOf, say } = clientAt(100);
    client.ask('a');
    vi.advanceTimersByTime(500);
    say(0, { kind: 'taken', id: idOf(0) });
    client.ask('b');
    vi.advanceTimersByTime(550);
    say(0, { kind: 'taken', id: idOf(0) });
    vi.advanceTimersByTime(1000);
    say(0, { kind: 'done', id: idOf(0) });
    client.ask('c');
    vi.advanceTimersByTime(5000);
    expect(lines.length).toBe(1);
    expect(lines[0]?.hungUp).toBe(false);
  });

  it('waits for one that keeps what is dear', () => {
    const { client, lines } = clientAt(null);
    client.ask('a');
    vi.advanceTimersByTime(500);
    client.ask('b');
    vi.advanceTimersByTime(60_000);
    expect(lines.length).toBe(1);
  });

  it('replaces a worker that is gone, once; then tells it, and begins anew when asked', () => {
    const { client, lines, tasks, failures, say } = clientAt();
    client.ask('a');
    vi.advanceTimersByTime(500);
    say(0, { kind: 'gone' });
    expect(tasks()).toEqual([['a'], ['a']]);
    expect(failures).toEqual([]);
    say(1, { kind: 'gone' });
    expect(failures).toEqual([{ code: 'broke', detail: 'gone without a word' }]);
    client.again();
    expect(tasks()).toEqual([['a'], ['a'], ['a']]);
    say(2, { kind: 'failed', code: 'no-worker', detail: 'refused' });
    expect(failures.at(-1)).toEqual({ code: 'no-worker', detail: 'refused' });
    client.end();
    expect(lines.every(({ hungUp }) => hungUp)).toBe(true);
  });

  it('has nothing more to say once it was told to forget', () => {
    const { client, lines, heard, failures, idOf, say } = clientAt();
    client.ask('a');
    vi.advanceTimersByTime(500);
    const id = idOf(0);
    client.forget();
    say(0, { kind: 'news', id, news: 'late' });
    say(0, { kind: 'stopped', id, failure: { code: 'broke', detail: '' } });
    vi.advanceTimersByTime(5000);
    expect([heard, failures, lines.length]).toEqual([[], [], 1]);
  });
});
