import { describe, expect, it } from 'vitest';
import { EvidenceDesk, type WeighedSitting } from '../../../src/app/evidence/EvidenceDesk.ts';
import type { EvidenceFailure, FromWorker } from '../../../src/app/evidence/messages.ts';
import type { Result } from '../../../src/base/Result.ts';
import type { Tick } from '../../../src/base/ticks.ts';
import type { CycleFacts } from '../../../src/sim/world/driveCycle.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import type { SittingAction, TimedAction } from '../../../src/training/sitting/SittingAction.ts';
import type { SittingRecord } from '../../../src/training/sitting/SittingRecord.ts';
import { bench } from '../../support/bench.ts';

const { scenario } = bench().fault('switch-stuck-open');
const sealed = sealScenario(scenario);
const record = Sitting.begin(scenario).record();

/** A sitting that owes so many turns for everything it is told, and writes down what becomes of it. */
class SlowSitting implements WeighedSitting {
  readonly heard: string[] = [];
  owes: number;
  worked = 0;
  /** What a turn costs on the test's clock. */
  turnMs = 3;

  constructor(
    readonly begun: SittingRecord,
    private readonly clock: { ms: number },
    private readonly each: number,
  ) {
    this.owes = begun.actions.length * each;
  }

  acted({ action }: TimedAction): void {
    this.heard.push(action.kind);
    this.owes += this.each;
  }
  passed(tick: Tick): void {
    this.heard.push(`to ${tick}`);
    this.owes += this.each;
  }
  work(mostTurns: number): number {
    const turns = Math.min(mostTurns, this.owes);
    this.owes -= turns;
    this.worked += turns;
    this.clock.ms += turns * this.turnMs;
    return turns;
  }
  get settled(): boolean {
    return this.owes === 0;
  }
  advice() {
    this.heard.push('advice');
    return { kind: 'nothing-left' } as const;
  }
  prepare(): void {
    this.heard.push('prepare');
  }
  debrief(closed: SittingRecord) {
    this.heard.push(`debrief of ${closed.actions.length}`);
    return { ok: false, error: { code: 'job-not-closed' } } as const;
  }
}

/** A desk whose turns of the worker the test takes one by one. */
function deskAt(options: { each?: number; load?: Result<null, EvidenceFailure> } = {}) {
  const clock = { ms: 0 };
  const posted: FromWorker[] = [];
  const sittings: SlowSitting[] = [];
  let waiting: (() => void)[] = [];
  const slices: number[] = [];
  const desk = new EvidenceDesk({
    load: async () =>
      options.load?.ok === false
        ? options.load
        : {
            ok: true,
            value: (_sealed, of) => {
              const sitting = new SlowSitting(of, clock, options.each ?? 4);
              sittings.push(sitting);
              return sitting;
            },
          },
    drive: ({ seed }) => [[`drive of ${seed}`, {} as CycleFacts]],
    post: (message) => posted.push(message),
    nowMs: () => clock.ms,
    later: (work) => waiting.push(work),
  });
  const turn = (): boolean => {
    const [work] = waiting;
    waiting = waiting.slice(1);
    const since = clock.ms;
    work?.();
    if (work !== undefined) slices.push(clock.ms - since);
    return work !== undefined;
  };
  const run = (): void => {
    for (let turns = 0; turn(); turns++) if (turns > 10_000) throw new Error('it never comes to rest');
  };
  const newest = (): SlowSitting => {
    const sitting = sittings.at(-1);
    if (sitting === undefined) throw new Error('nothing was opened');
    return sitting;
  };
  return { desk, posted, sittings, slices, turn, run, newest, loaded: () => Promise.resolve() };
}

const acted = (kind: 'accept-job' | 'log' | 'close-job', tick: Tick = 0) =>
  ({ kind: 'acted', timed: { tick, action: { kind } as SittingAction } }) as const;

describe('the evidence desk', () => {
  it('serves nothing before the tables are there, and then everything in order', async () => {
    const { desk, posted, run, newest, loaded } = deskAt();
    desk.hear({ kind: 'open', sealed, record });
    desk.hear(acted('accept-job'));
    desk.hear(acted('log', 5));
    run();
    expect(posted).toEqual([]);
    await loaded();
    run();
    expect(posted).toEqual([{ kind: 'ready' }]);
    expect(newest().heard.slice(0, 2)).toEqual(['accept-job', 'log']);
  });

  it('keeps only the latest of ticks that passed, and never past an action', async () => {
    const { desk, run, newest, loaded } = deskAt();
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    desk.hear({ kind: 'passed', tick: 10 });
    desk.hear({ kind: 'passed', tick: 20 });
    desk.hear(acted('log', 25));
    desk.hear({ kind: 'passed', tick: 30 });
    desk.hear({ kind: 'passed', tick: 40 });
    run();
    expect(newest().heard).toEqual(['to 20', 'log', 'to 40', 'prepare']);
  });

  it('answers only when every bench is in step, and about the moment of the question', async () => {
    const { desk, posted, turn, run, newest, loaded } = deskAt({ each: 50 });
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    desk.hear(acted('log'));
    desk.hear({ kind: 'advise', id: 7 });
    for (let i = 0; i < 3; i++) turn();
    expect(newest().worked).toBeGreaterThan(0);
    expect(newest().settled).toBe(false);
    // What comes after the question waits for the answer.
    desk.hear(acted('log', 9));
    run();
    expect(newest().heard).toEqual(['log', 'advice', 'log', 'prepare']);
    expect(posted).toEqual([{ kind: 'ready' }, { kind: 'advice', id: 7, advice: { kind: 'nothing-left' } }]);
    expect(newest().settled).toBe(true);
  });

  it('hears what it is told at least every few milliseconds of work', async () => {
    const { desk, run, slices, newest, loaded } = deskAt({ each: 400 });
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    desk.hear(acted('log'));
    run();
    expect(newest().worked).toBe(400);
    expect(slices.length).toBeGreaterThan(50);
    expect(Math.max(...slices)).toBeLessThanOrEqual(15);
  });

  it('prepares the debrief once, in the first idle moment, and comes to rest', async () => {
    const { desk, turn, run, newest, loaded } = deskAt();
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    desk.hear(acted('log'));
    run();
    desk.hear(acted('log'));
    run();
    expect(newest().heard).toEqual(['log', 'prepare', 'log']);
    expect(turn()).toBe(false);
  });

  it('weighs the record of a debrief when it is not what was heard', async () => {
    const { desk, posted, sittings, run, loaded } = deskAt();
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    desk.hear(acted('accept-job'));
    const heard = { tick: 0, action: { kind: 'accept-job' } } as const;
    desk.hear({ kind: 'debrief', id: 1, record: { ...record, actions: [heard] } });
    run();
    expect(sittings.length).toBe(1);
    desk.hear({ kind: 'debrief', id: 2, record: { ...record, actions: [heard, heard, heard] } });
    run();
    expect(sittings.map(({ begun }) => begun.actions.length)).toEqual([0, 3]);
    expect(sittings[1]?.worked).toBe(12);
    expect(posted.map((message) => (message.kind === 'debriefed' ? message.id : message.kind))).toEqual([
      'ready',
      1,
      2,
    ]);
  });

  it('works drives out at once, before the tables are there and after it is broken', async () => {
    const failure = { code: 'no-tables', detail: '404' } as const;
    const { desk, posted, loaded } = deskAt({ load: { ok: false, error: failure } });
    desk.hear({ kind: 'drive', id: 1, sealed, seed: 'one', record: null });
    expect(posted).toEqual([{ kind: 'driven', id: 1, outcomes: [['drive of one', {}]] }]);
    await loaded();
    desk.hear({ kind: 'drive', id: 2, sealed, seed: 'two', record: null });
    expect(posted.map(({ kind }) => kind)).toEqual(['driven', 'failed', 'driven']);
  });

  it('says why it cannot begin, and is silent from then on', async () => {
    const failure = { code: 'no-tables', detail: '404' } as const;
    const { desk, posted, run, loaded } = deskAt({ load: { ok: false, error: failure } });
    desk.hear({ kind: 'open', sealed, record });
    await loaded();
    run();
    desk.hear({ kind: 'advise', id: 1 });
    run();
    expect(posted).toEqual([{ kind: 'failed', ...failure }]);
  });

  it('says what broke, and is silent from then on', async () => {
    const { desk, posted, run, newest, loaded } = deskAt();
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    run();
    newest().work = () => {
      throw new Error('a fuse of the program');
    };
    newest().owes = 1;
    desk.hear({ kind: 'advise', id: 1 });
    run();
    desk.hear({ kind: 'advise', id: 2 });
    run();
    expect(posted).toEqual([
      { kind: 'ready' },
      { kind: 'failed', code: 'broke', detail: 'a fuse of the program' },
    ]);
  });

  it('does not turn on the spot when a sitting owes work and does none', async () => {
    const { desk, posted, run, newest, loaded } = deskAt();
    await loaded();
    desk.hear({ kind: 'open', sealed, record });
    run();
    newest().work = () => 0;
    newest().owes = 1;
    desk.hear({ kind: 'advise', id: 1 });
    run();
    expect(posted.at(-1)).toMatchObject({ kind: 'failed', code: 'broke' });
  });
});
