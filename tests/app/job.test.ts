import { describe, expect, it } from 'vitest';
import { EvidenceClient } from '../../src/app/evidence/EvidenceClient.ts';
import { finished, openJob } from '../../src/app/openJob.ts';
import { readStored } from '../../src/app/readStored.ts';
import { SittingDesk } from '../../src/app/SittingDesk.ts';
import { SittingKeeper } from '../../src/app/SittingKeeper.ts';
import { secondsToTicks, ticksToSeconds } from '../../src/base/ticks.ts';
import { memoryStore } from '../../src/platform/browser/memoryStore.ts';
import type { StoredSitting } from '../../src/platform/browser/StoredSitting.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { sealScenario } from '../../src/training/scenario/seal.ts';
import type { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { TimedAction } from '../../src/training/sitting/SittingAction.ts';
import { bench } from '../support/bench.ts';
import { FakeLines } from './support/fakeLine.ts';

const sealed = sealScenario(bench().fault('switch-stuck-open').scenario);
const NOTHING = { acted: () => {}, jumped: () => {}, exportRecord: () => {} };

function evidenceFor(sitting: Sitting, lines = new FakeLines()): EvidenceClient {
  const evidence = new EvidenceClient({
    sealed,
    openLine: lines.open,
    failed: ({ detail }) => {
      throw new Error(detail);
    },
  });
  evidence.follow(() => sitting.record());
  return evidence;
}

/** Opens the job as the page does: what is stored is read first. */
function openKept(stored?: { readonly record: unknown }) {
  const record = stored === undefined ? undefined : readStored(stored);
  return record === undefined || record.ok ? openJob(sealed, record?.value, () => 'seed-of-the-day') : record;
}

function open(stored?: StoredSitting) {
  const opened = openKept(stored);
  if (!opened.ok) throw new Error(opened.error.code);
  const desk = new SittingDesk(opened.value.sitting, evidenceFor(opened.value.sitting), NOTHING, false);
  return { ...opened.value, desk };
}

/** A desk that is worked for a while and kept on the way, as the page does it. */
async function worked() {
  const store = memoryStore<StoredSitting>();
  const opened = openJob(sealed, undefined, () => 'seed-of-the-day');
  if (!opened.ok) throw new Error(opened.error.code);
  const { sitting } = opened.value;
  const lines = new FakeLines();
  const acted = ({ action }: TimedAction): void => keeper.acted(action.kind, sitting.tick);
  const desk = new SittingDesk(sitting, evidenceFor(sitting, lines), { ...NOTHING, acted }, false);
  const keeper = new SittingKeeper(
    store,
    {
      scenario: 'job',
      record: () => desk.record(),
      closed: () => desk.phase.peek() === 'closed',
      score: () => desk.facts.peek()?.score.total ?? null,
      facts: () => null,
    },
    () => 0,
  );
  const pass = (seconds: number): void => {
    desk.pass(secondsToTicks(seconds));
    keeper.passed(sitting.tick);
  };
  return { store, desk, keeper, sitting, pass, lines };
}

const WORK: readonly Action[] = [
  { kind: 'set-meter', function: 'volts-dc' },
  { kind: 'place-lead', end: 'meter-red', point: 'battery-positive' },
  { kind: 'place-lead', end: 'meter-black', point: 'battery-negative' },
];

describe('a job kept and opened again', () => {
  it('goes on at the same tick, with the same log and the same state to the last bit', async () => {
    const { store, desk, keeper, sitting, pass } = await worked();
    desk.act({ kind: 'accept-job' });
    for (const action of WORK) {
      desk.act(action);
      pass(0.7);
    }
    desk.logReading();
    pass(0.123);
    keeper.save();
    await keeper.idle();
    const again = open(await store.get('job'));
    expect(again.sitting.tick).toBe(sitting.tick);
    expect(again.desk.log.value).toEqual(desk.log.value);
    expect(again.sitting.record().endHash).toBe(sitting.record().endHash);
  });

  it('is saved at each action and every two seconds of sitting time', async () => {
    const { store, desk, keeper, sitting, pass } = await worked();
    desk.act({ kind: 'accept-job' });
    await keeper.idle();
    expect((await store.get('job'))?.tick).toBe(0);
    for (let i = 0; i < 25; i++) pass(0.1);
    await keeper.idle();
    const kept = (await store.get('job'))?.tick ?? 0;
    expect(sitting.tick - kept).toBeLessThan(secondsToTicks(2));
    expect(kept).toBeGreaterThan(0);
  });

  it('keeps nothing that names the fault, and no more than the record', async () => {
    const { store, desk, keeper } = await worked();
    desk.act({ kind: 'accept-job' });
    await keeper.idle();
    const text = JSON.stringify(await store.get('job'));
    expect(text).toContain('accept-job');
    expect(text).not.toMatch(/switch-stuck|stuck-open|faults/);
    expect(JSON.stringify(sealed)).not.toMatch(/switch-stuck-open/);
  });

  it('is refused when the record is damaged, and when the scenario has changed', async () => {
    const { store, desk, keeper } = await worked();
    desk.act({ kind: 'accept-job' });
    await keeper.idle();
    const stored = await store.get('job');
    if (stored === undefined) throw new Error('nothing kept');
    const code = (record: unknown): string => {
      const opened = openKept({ ...stored, record });
      return opened.ok ? 'opened' : opened.error.code;
    };
    const record = stored.record as Record<string, unknown>;
    expect(code(record)).toBe('opened');
    expect(code({ ...record, endHash: '0'.repeat(64) })).toBe('record-damaged');
    expect(code('nonsense')).toBe('record-damaged');
    expect(code(undefined)).toBe('record-damaged');
    expect(code({ ...record, format: 2 })).toBe('record-newer');
    const scenario = { ...(record['scenario'] as object), contentHash: '0'.repeat(64) };
    expect(code({ ...record, scenario })).toBe('record-changed');
  });
});

describe('a finished job that is kept', () => {
  it('is kept as finished before its score is known, and lets nothing more be done when it is read again', async () => {
    const { store, desk, keeper } = await worked();
    desk.act({ kind: 'accept-job' });
    keeper.save();
    await keeper.idle();
    const open = await store.get('job');
    if (open === undefined) throw new Error('nothing kept');
    // What is not finished has no debrief yet.
    expect(finished(openKept(open))).toEqual({
      ok: false,
      error: { code: 'record-damaged' },
    });
    desk.act({ kind: 'give-verdict', item: 'unit', mode: null, cites: [] });
    desk.act({ kind: 'close-job' });
    await keeper.idle();
    const stored = await store.get('job');
    if (stored === undefined) throw new Error('nothing kept');
    const again = finished(openKept(stored));
    if (!again.ok) throw new Error(again.error.code);
    expect(stored).toMatchObject({ state: 'finished', score: null, record: { claimedScore: null } });
    const read = new SittingDesk(again.value.sitting, evidenceFor(again.value.sitting), NOTHING, true);
    expect(read.log.value).toEqual(desk.log.value);
    expect(read.act({ kind: 'log' })).toBe('job-is-closed');
  });
});

describe('the desk', () => {
  it('says a refusal in its own words and changes nothing', () => {
    const { desk, sitting } = open();
    desk.act({ kind: 'accept-job' });
    const before = sitting.record().endHash;
    expect(desk.act({ kind: 'place-lead', end: 'meter-red', point: 'cavity-3-back' })).toBe(
      'point-needs-pin',
    );
    expect(desk.caption.value).toMatchObject({ tone: 'refusal', sentence: expect.stringMatching(/pin/) });
    expect(sitting.record().endHash).toBe(before);
  });

  it('lets no time pass before the job is taken', () => {
    const { desk, sitting } = open();
    desk.pass(secondsToTicks(1));
    expect(sitting.tick).toBe(0);
  });

  it('runs ahead at once by just the time that is waited, as an action of the record', () => {
    const { desk, sitting } = open();
    desk.act({ kind: 'accept-job' });
    desk.wait(10);
    expect(sitting.tick).toBe(secondsToTicks(10));
    expect(desk.observation.value.tick).toBe(secondsToTicks(10));
    expect(desk.caption.value.sentence).toBe('10 s went by.');
    expect(sitting.record().actions.at(-1)).toEqual({ tick: 0, action: { kind: 'wait', seconds: 10 } });
  });

  it('waits until steady, and says how long that took', () => {
    const { desk, sitting } = open();
    desk.act({ kind: 'accept-job' });
    for (const action of WORK) desk.act(action);
    desk.waitSteady();
    const seconds = ticksToSeconds(sitting.tick);
    expect(seconds).toBeGreaterThanOrEqual(1);
    expect(seconds).toBeLessThan(10);
    expect(desk.observation.value.meter.display.settled).toBe(true);
    expect(desk.caption.value.sentence).toBe(`Steady after ${Math.round(seconds)} s.`);
  });

  it('goes on after waits to the same bit, with frames before and after them', async () => {
    const { store, desk, keeper, sitting, pass } = await worked();
    desk.act({ kind: 'accept-job' });
    for (const action of WORK) desk.act(action);
    pass(0.0167);
    desk.wait(10);
    pass(0.0333);
    desk.waitSteady();
    pass(0.0167);
    keeper.save();
    await keeper.idle();
    const again = open(await store.get('job'));
    expect(again.sitting.tick).toBe(sitting.tick);
    expect(again.sitting.record().endHash).toBe(sitting.record().endHash);
  });

  it('tells its surroundings of a jump, so that real time begins anew', () => {
    let jumps = 0;
    const opened = openJob(sealed, undefined, () => 's');
    if (!opened.ok) throw new Error(opened.error.code);
    const jumped = (): void => {
      jumps += 1;
    };
    const desk = new SittingDesk(
      opened.value.sitting,
      evidenceFor(opened.value.sitting),
      { ...NOTHING, jumped },
      false,
    );
    desk.act({ kind: 'accept-job' });
    desk.act({ kind: 'set-key', position: 'on' });
    expect(jumps).toBe(0);
    desk.wait(10);
    expect(jumps).toBe(1);
  });

  it('says what an eye found, and keeps it in the log', () => {
    const { desk } = open();
    desk.act({ kind: 'accept-job' });
    desk.act({ kind: 'look', at: 'filter' });
    expect(desk.log.value.at(-1)?.about).toBe('finding');
    expect(desk.caption.value.sentence).toMatch(/^Looked at the air filter: .+\.$/);
  });

  it('keeps what the reader showed when codes are read, and refuses with the key off', () => {
    const { desk } = open();
    desk.act({ kind: 'accept-job' });
    expect(desk.act({ kind: 'read-codes' })).toBe('reader-needs-key-on');
    desk.act({ kind: 'set-key', position: 'on' });
    expect(desk.act({ kind: 'read-codes' })).toBeNull();
    expect(desk.log.value.map(({ about }) => about)).toEqual(['codes']);
  });
});
