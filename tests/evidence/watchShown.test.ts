import { describe, expect, it } from 'vitest';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { SuspectWorld } from '../../src/training/evidence/SuspectWorld.ts';
import { ROOM, WatchedBench } from './support.ts';

const TORN: readonly FaultChoice[] = [{ fault: 'capsule-torn', severity: 0.5 }];
const STUCK: readonly FaultChoice[] = [{ fault: 'plunger-stuck', severity: 1 }];
const OPEN: readonly FaultChoice[] = [{ fault: 'winding-open', severity: 1 }];

function vacuumJob(faults: readonly FaultChoice[], seed = 'truth'): WatchedBench {
  const bench = new WatchedBench(faults, seed);
  bench
    .meterOn('cavity-3-back', 'battery-negative', 'volts-dc')
    .do({ kind: 'set-key', position: 'on' })
    .wait(4);
  bench.do({ kind: 'command-solenoid', command: 'on' }).wait(2);
  bench.do({ kind: 'command-solenoid', command: 'off' }).wait(2);
  bench.pumpOn().strokes(2).wait(22);
  return bench.do({ kind: 'release', open: true }).wait(4);
}

describe('what is taken down', () => {
  it('a settled meter, a click each way, the reader, the gauge and a hold of 20 s', () => {
    const bench = vacuumJob([]);
    const sense = bench.shown('meter').filter((value): value is number => typeof value === 'number');
    expect(Math.max(...sense)).toBeGreaterThan(8.5);
    expect(Math.min(...sense)).toBeLessThan(0.1);
    expect(bench.shown('click').slice(-2)).toEqual([true, true]);
    expect(bench.shown('reader-state')).toContain('closed');
    expect(bench.shown('hold').at(-1)).toBeLessThan(1.5);
    expect(bench.shown('gauge').at(-2)).toBeGreaterThan(25);
  });

  it('a click that does not come is taken down as well', () => {
    expect(vacuumJob(STUCK).shown('click').slice(-2)).toEqual([false, false]);
  });

  it('over range is an answer of its own', () => {
    const bench = new WatchedBench(OPEN).do({ kind: 'part-plug' });
    bench.meterOn('unit-1', 'unit-2', 'ohms').wait(6);
    expect(bench.shown('meter')).toEqual([null]);
  });

  it('what the eyes find, once for each look', () => {
    const bench = new WatchedBench([{ fault: 'filter-clogged', severity: 1 }]);
    bench.do({ kind: 'look', at: 'filter' }, { kind: 'look', at: 'unit' });
    expect(bench.shown('finding')).toEqual(['dirty', 'nothing-wrong']);
  });

  it('a reading that stands is taken down once, not ten times a second', () => {
    const bench = new WatchedBench([]).meterOn('cavity-3-back', 'battery-negative', 'volts-dc');
    bench.do({ kind: 'set-key', position: 'on' }).wait(30);
    expect(bench.shown('meter')).toHaveLength(1);
  });

  it('water at the moment the switch turns, down and up', () => {
    const bench = new WatchedBench([]);
    bench.do(
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'fit', item: 'jar-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      { kind: 'take-off', item: 'air-hose' },
      { kind: 'fit', item: 'cap-a', site: 'air-port' },
      { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
      { kind: 'fit', item: 'manometer-hose', site: 'jar-tee-a' },
      { kind: 'fit', item: 'pump-hose', site: 'jar-tee-b' },
      { kind: 'set-key', position: 'on' },
    );
    bench.wait(1);
    for (let i = 0; i < 40 && bench.world.observe().reader.senseState === 'open'; i++) {
      bench.do({ kind: 'stroke', depth: 0.1 }).wait(1.5);
    }
    bench.do({ kind: 'set-bleed', openness: 0.4 }).wait(60);
    const [trip, reset] = bench.shown('manometer') as number[];
    // Service data: trip 10 ± 0.8, reset 7.6 ± 0.8 inH2O.
    expect(Math.abs((trip ?? 0) / 0.249 - 10)).toBeLessThan(1.2);
    expect(Math.abs((reset ?? 0) / 0.249 - 7.6)).toBeLessThan(1.2);
  });
});

describe('other worlds', () => {
  it('one with the same faults and seed answers every question as the true bench did', () => {
    const bench = vacuumJob(TORN);
    const same = new SuspectWorld('truth', TORN, ROOM);
    same.catchUp(bench.watch.script);
    expect(same.answers).toEqual(bench.watch.asked.map(({ shown }) => shown));
  });

  it('answers the same whether it goes along or comes after', () => {
    const along = new SuspectWorld('draw', [], ROOM);
    const bench = new WatchedBench(TORN).pumpOn();
    along.catchUp(bench.watch.script);
    bench.strokes(1);
    along.catchUp(bench.watch.script);
    bench.strokes(2).wait(21);
    along.catchUp(bench.watch.script);
    const after = new SuspectWorld('draw', [], ROOM);
    after.catchUp(bench.watch.script);
    expect(along.answers).toEqual(after.answers);
    along.letGo();
    along.catchUp(bench.watch.script);
    expect(along.answers).toEqual(after.answers);
  });

  it('a sound world keeps its vacuum where the torn one lost it', () => {
    const bench = new WatchedBench(TORN).pumpOn().strokes(3);
    const sound = new SuspectWorld('draw', [], ROOM);
    sound.catchUp(bench.watch.script);
    const last = bench.watch.asked.map(({ question }) => question.about).lastIndexOf('gauge');
    expect(bench.watch.asked[last]?.shown.value).toBeLessThan(20);
    expect(sound.answers[last]?.value).toBeGreaterThan(35);
  });

  it('set-ups tell what the hands did and nothing that was shown: two truths, the same keys', () => {
    const keys = (faults: readonly FaultChoice[], seed: string): readonly string[] =>
      vacuumJob(faults, seed)
        .watch.asked.filter(({ question }) => question.about !== 'hold')
        .map(({ question }) => question.setUp);
    expect(keys(STUCK, 'a')).toEqual(keys([], 'b'));
  });
});
