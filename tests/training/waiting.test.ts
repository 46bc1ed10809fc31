import { describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { parseRecord } from '../../src/training/sitting/parseRecord.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import { bench } from '../support/bench.ts';

describe('waiting', () => {
  it('passes its seconds, and is in the record as one action', () => {
    const { sitting } = bench().does('accept');
    expect(sitting.apply({ kind: 'wait', seconds: 10 }).ok).toBe(true);
    expect(sitting.tick).toBe(secondsToTicks(10));
    expect(sitting.record().actions.at(-1)).toEqual({ tick: 0, action: { kind: 'wait', seconds: 10 } });
    expect(sitting.view().strip).toHaveLength(101);
  });

  it('until steady, ends as soon as nothing moves', () => {
    const still = bench().does('accept').sitting;
    still.apply({ kind: 'wait-steady' });
    expect(still.tick).toBeLessThanOrEqual(secondsToTicks(2));
    const pumped = bench().does('accept\nfit plug-a on pump-hose-end').sitting;
    pumped.apply({ kind: 'stroke', depth: 1 });
    const from = pumped.tick;
    pumped.apply({ kind: 'wait-steady' });
    const { gauge, handPump } = pumped.observe();
    expect({ steady: gauge.steady, moving: handPump.moving }).toEqual({ steady: true, moving: false });
    expect(pumped.tick - from).toBeLessThan(secondsToTicks(20));
  });

  it('until steady, gives up after a minute', () => {
    // The solenoid is pulsed twice a second and the meter stands on its feed: the digits never rest.
    const { sitting } = bench().does(
      'accept\npin in 1\nmeter volts-dc\nlead meter-red to cavity-1-back\nlead meter-black to battery-negative\nkey on\nsolenoid pulse',
    );
    const from = sitting.tick;
    sitting.apply({ kind: 'wait-steady' });
    expect(sitting.tick - from).toBe(secondsToTicks(60));
  });

  it('is refused before the job is taken and after it is closed', () => {
    expect(bench().sitting.apply({ kind: 'wait', seconds: 10 })).toEqual({
      ok: false,
      error: 'job-not-accepted',
    });
    const { sitting } = bench().does('accept\nverdict nothing-wrong\nclose');
    expect(sitting.apply({ kind: 'wait-steady' })).toEqual({ ok: false, error: 'job-is-closed' });
  });

  it('replays to the same world from the record as text', () => {
    const worked = bench().does(
      'accept\nkey on\nwait 10 s\nfit plug-a on pump-hose-end\nstroke full\nwait steady\nlog',
    );
    const record = worked.sitting.record();
    const parsed = parseRecord(JSON.stringify(record));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
    const again = replay(worked.scenario, parsed.value);
    if (!again.ok) throw new Error(JSON.stringify(again.error));
    expect(again.value.record()).toEqual(record);
    expect(again.value.view().log).toEqual(worked.sitting.view().log);
  });

  it('does not let a record act before its own wait is over', () => {
    const worked = bench().does('accept\nwait 10 s\nlog');
    const record = worked.sitting.record();
    const actions = record.actions.map((timed) =>
      timed.action.kind === 'log' ? { ...timed, tick: secondsToTicks(5) } : timed,
    );
    expect(replay(worked.scenario, { ...record, actions })).toEqual({
      ok: false,
      error: { code: 'actions-out-of-order', index: 2 },
    });
  });
});

describe('what writes itself down', () => {
  it('codes that were read, with the key on only', () => {
    const { sitting } = bench().does('accept');
    expect(sitting.apply({ kind: 'read-codes' })).toEqual({ ok: false, error: 'reader-needs-key-on' });
    sitting.apply({ kind: 'set-key', position: 'on' });
    expect(sitting.apply({ kind: 'read-codes' }).ok).toBe(true);
    expect(sitting.view().log).toMatchObject([{ id: 1, about: 'codes' }]);
  });

  it('what eyes, ears and hands found', () => {
    const { sitting } = bench().does('accept\nlook filter\nlisten canister\npart plug\ndrag 2');
    expect(sitting.view().log.map(({ about, seen }) => [about, seen.findings.at(-1)?.how])).toEqual([
      ['finding', 'look'],
      ['finding', 'listen'],
      ['finding', 'drag'],
    ]);
  });

  it('a road test, which may be driven at any time', () => {
    const { sitting } = bench().does('accept\ndrive 1');
    expect(sitting.view().log).toMatchObject([{ about: 'drive' }]);
    expect(sitting.observe().lastDrive?.cycles).toHaveLength(1);
  });

  it('nothing that the bench refused', () => {
    const { sitting } = bench().does('accept');
    expect(sitting.apply({ kind: 'drag-test', cavity: 1 })).toEqual({
      ok: false,
      error: 'plug-must-be-parted',
    });
    expect(sitting.view().log).toEqual([]);
  });
});
