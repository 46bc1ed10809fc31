import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseRecord } from '../../src/training/sitting/parseRecord.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import { MAX_TICK, PROGRAM_VERSION, type SittingRecord } from '../../src/training/sitting/SittingRecord.ts';
import { bench } from '../support/bench.ts';

const WORK = `accept
meter volts-dc
lead meter-red to battery-positive
lead meter-black to battery-negative
wait steady
log "Battery"
verdict unit cites 1
close
`;

/** A fresh closed job, and a record of it that a test may change. */
function job(change: (record: Mutable<SittingRecord>) => void = () => undefined) {
  const work = bench().fault('switch-stuck-open').does(WORK);
  const record = JSON.parse(JSON.stringify(work.sitting.record(7))) as Mutable<SittingRecord>;
  change(record);
  return { scenario: work.scenario, record, sitting: work.sitting };
}
type Mutable<T> = {
  -readonly [K in keyof T]: T[K] extends readonly (infer U)[]
    ? Mutable<U>[]
    : T[K] extends object
      ? Mutable<T[K]>
      : T[K];
};

describe('a record', () => {
  it('reads back as it was written', () => {
    const { record } = job();
    expect(parseRecord(JSON.stringify(record))).toEqual({ ok: true, value: record });
  });

  it('states the version of the package', () => {
    const text = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
    expect((JSON.parse(text) as { version: string }).version).toBe(PROGRAM_VERSION);
  });

  it('holds nothing a score could be read from but the claim', () => {
    const { record } = job();
    expect(Object.keys(record).sort()).toEqual([
      'actions',
      'claimedScore',
      'endHash',
      'endTick',
      'format',
      'mode',
      'program',
      'scenario',
      'seed',
      'version',
    ]);
    expect(JSON.stringify(record)).not.toMatch(/switch-stuck|right|kept|points/);
  });

  it.each([
    ['record-not-json', 'not json'],
    ['record-wrong-form', '{}'],
    ['record-wrong-form', '[]'],
    ['record-wrong-form', 'null'],
    ['record-wrong-form', JSON.stringify({ ...job().record, program: 'other' })],
    ['record-wrong-form', JSON.stringify({ ...job().record, format: 2 })],
    ['record-wrong-form', JSON.stringify({ ...job().record, extra: 1 })],
    ['record-wrong-form', JSON.stringify({ ...job().record, claimedScore: 101 })],
    ['record-wrong-form', JSON.stringify({ ...job().record, endTick: 1.5 })],
    ['record-wrong-form', JSON.stringify({ ...job().record, endTick: MAX_TICK + 1 })],
    [
      'record-unknown-action',
      JSON.stringify({ ...job().record, actions: [{ tick: 0, action: { kind: 'cheat' } }] }),
    ],
    [
      'record-unknown-action',
      JSON.stringify({ ...job().record, actions: [{ tick: 0, action: { kind: 'stroke', depth: 2 } }] }),
    ],
    [
      'record-unknown-action',
      JSON.stringify({ ...job().record, actions: [{ tick: 0, action: { kind: 'log', extra: 1 } }] }),
    ],
  ])('%s when it is not one', (code, text) => {
    const parsed = parseRecord(text);
    expect(parsed.ok ? null : parsed.error.code).toBe(code);
  });

  it('says where it is wrong', () => {
    const { record } = job();
    const text = JSON.stringify({
      ...record,
      actions: [...record.actions, { tick: -1, action: { kind: 'log' } }],
    });
    const parsed = parseRecord(text);
    expect(parsed.ok ? '' : parsed.error.path).toBe(`actions[${record.actions.length}].tick`);
  });
});

describe('replaying a record', () => {
  it('gives the same readings, to the last digit', () => {
    const { scenario, record, sitting } = job();
    const again = replay(scenario, record);
    expect(again.ok && again.value.view()).toEqual(sitting.view());
    expect(again.ok && again.value.record(7)).toEqual(record);
  });

  it.each<[string, (record: Mutable<SittingRecord>) => void]>([
    ['wrong-scenario', (record) => (record.scenario.contentHash = 'f'.repeat(64))],
    ['wrong-scenario', (record) => (record.scenario.id = 'other')],
    ['wrong-mode', (record) => (record.mode = 'assessment')],
    [
      'actions-out-of-order',
      (record) =>
        (record.actions[1] = { tick: MAX_TICK - 1, action: { kind: 'set-meter', function: 'volts-dc' } }),
    ],
    ['end-before-last-action', (record) => (record.endTick = 10)],
    ['tick-beyond-day', (record) => (record.endTick = MAX_TICK + 1)],
    ['action-refused', (record) => record.actions.unshift({ tick: 0, action: { kind: 'log' } })],
    ['action-refused', (record) => record.actions.splice(0, 1)],
    ['end-differs', (record) => (record.seed = 'another')],
    ['end-differs', (record) => (record.endTick += 1)],
    ['end-differs', (record) => (record.endHash = '0'.repeat(64))],
    ['end-differs', (record) => record.actions.splice(3, 1)],
    [
      'end-differs',
      (record) => record.actions.splice(1, 0, { tick: 0, action: { kind: 'set-key', position: 'running' } }),
    ],
  ])('refuses with %s what was changed', (code, change) => {
    const { scenario, record } = job(change);
    const again = replay(scenario, record);
    expect(again.ok ? null : again.error.code).toBe(code);
  });
});
