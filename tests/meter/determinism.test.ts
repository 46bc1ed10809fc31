import { describe, expect, test } from 'vitest';
import { Random } from '../../src/base/Random.ts';
import { EXTREMES, METER_FUNCTIONS, METER_JACKS } from '../../src/sim/devices/places.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { restoreWorld } from '../../src/sim/world/World.ts';
import { WorldBench } from '../support/worldBench.ts';

const seen = (bench: WorldBench) => bench.world.observe().meter;

describe('determinism', () => {
  /** Meter keys, selector, jacks and leads at odd moments, on a circuit that moves. */
  function busyMeter(seed: string, advance: (bench: WorldBench, to: number) => void): WorldBench {
    const bench = new WorldBench().pin(1).pin(3).do({ kind: 'set-key', position: 'on' });
    bench.do({ kind: 'command-solenoid', command: 'pulse' }).lead('meter-black', 'battery-negative');
    const random = Random.of(seed, 'keys');
    const pick = <T>(from: readonly T[]): T => from[Math.floor(random.next() * from.length)] as T;
    let tick = 0;
    for (let i = 0; i < 150; i++) {
      tick += Math.floor(random.next() * 9000);
      advance(bench, tick);
      const action: Action = pick<() => Action>([
        () => ({ kind: 'set-meter', function: pick(METER_FUNCTIONS) }),
        () => ({ kind: 'meter-range', range: random.next() < 0.5 ? null : Math.floor(random.next() * 4) }),
        () => ({ kind: 'meter-hold', on: random.next() < 0.3 }),
        () => ({ kind: 'meter-extremes', show: pick(EXTREMES) }),
        () => ({ kind: 'meter-relative', on: random.next() < 0.5 }),
        () => ({ kind: 'meter-jack', jack: pick(METER_JACKS) }),
        () => ({
          kind: 'place-lead',
          end: 'meter-red',
          point: pick(['cavity-1-back', 'cavity-3-back', 'chassis-stud']),
        }),
      ])();
      bench.world.apply(action);
    }
    return bench;
  }

  test('how time is cut changes no digit, whatever the keys do', () => {
    const whole = busyMeter('cut', (bench, to) => bench.world.advanceTo(to));
    const cuts = Random.of('cut', 'pieces');
    const cut = busyMeter('cut', (bench, to) => {
      while (bench.world.tick < to) {
        const piece = 1 + Math.floor(cuts.next() * cuts.next() * 3000);
        bench.world.advanceTo(Math.min(bench.world.tick + piece, to));
        bench.world.observe();
      }
    });
    expect(cut.world.hash()).toBe(whole.world.hash());
    expect(seen(cut)).toEqual(seen(whole));
  });

  test('a meter in mid-window goes on from a snapshot to the same digits', () => {
    const first = busyMeter('snap', (bench, to) => bench.world.advanceTo(to));
    const spec = { seed: 'bench', faults: [], ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };
    const second = restoreWorld(spec, JSON.parse(JSON.stringify(first.world.snapshot())));
    for (let i = 1; i <= 20; i++) {
      const tick = first.world.tick + 1234;
      first.world.advanceTo(tick);
      second.advanceTo(tick);
      expect(second.observe().meter).toEqual(seen(first));
    }
  });
  test('one seed gives one row of digits; another seed another', () => {
    const row = (seed: string): string => {
      const bench = new WorldBench([], { seed }).meter('volts-dc').lead('meter-red', 'battery-positive');
      bench.lead('meter-black', 'battery-negative');
      return Array.from({ length: 40 }, () => seen(bench.wait(0.25)).display.digits).join(' ');
    };
    expect(row('one')).toBe(row('one'));
    expect(row('one')).not.toBe(row('two'));
  });

  test('a reading depends on the reading before it only through what the circuit did: looking away changes nothing', () => {
    const watched = new WorldBench().senseWatched();
    const unwatched = new WorldBench().senseWatched();
    for (let i = 0; i < 37; i++) watched.wait(0.1).world.observe();
    unwatched.wait(3.7);
    expect(watched.world.hash()).toBe(unwatched.world.hash());
  });
});
