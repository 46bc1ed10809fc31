import { describe, expect, test } from 'vitest';
import type { HappeningKind, HappeningPlace } from '../../src/sim/world/Observation.ts';
import { WorldBench } from '../support/worldBench.ts';

function placesOf(bench: WorldBench, kind: HappeningKind): readonly (HappeningPlace | null)[] {
  return bench.world
    .observe()
    .happenings.filter((one) => one.kind === kind)
    .map(({ at }) => at);
}

/** The unit on the battery through the jumper and the plain lead, its coil drawn. */
function drawn(): WorldBench {
  const bench = new WorldBench().do({ kind: 'part-plug' });
  bench.lead('jumper-supply', 'battery-positive').lead('jumper-far', 'unit-1');
  bench.lead('plain-a', 'battery-negative').lead('plain-b', 'unit-2');
  return bench.do({ kind: 'switch-jumper', on: true }).wait(0.5);
}

describe('a happening carries its place', () => {
  test('a coil broken by the switch, by a lead and by the plug sparks there and nowhere else', () => {
    expect(placesOf(drawn().do({ kind: 'switch-jumper', on: false }).wait(0.2), 'spark')).toEqual(['jumper']);
    const lifted = drawn().do({ kind: 'lift-lead', end: 'plain-b' }).wait(0.2);
    expect(placesOf(lifted, 'spark')).toEqual(['unit-2']);
    const moved = drawn().lead('jumper-far', 'unit-3').wait(0.2);
    expect(placesOf(moved, 'spark')).toEqual(['unit-1']);
    const driven = new WorldBench().do(
      { kind: 'set-key', position: 'on' },
      { kind: 'command-solenoid', command: 'on' },
    );
    expect(placesOf(driven.wait(0.5).do({ kind: 'part-plug' }).wait(0.5), 'spark')).toEqual(['plug']);
  });

  test('a short over the battery sparks and burns the lead where it was laid last', () => {
    for (const last of ['battery-positive', 'battery-negative'] as const) {
      const first = last === 'battery-positive' ? 'battery-negative' : 'battery-positive';
      const bench = new WorldBench().lead('plain-b', first).wait(1).lead('plain-a', last).wait(1);
      expect(placesOf(bench, 'spark')[0]).toBe(last);
      expect(placesOf(bench, 'lead-burnt')).toEqual([last]);
    }
  });

  test('each fuse pops in its own holder', () => {
    for (const jack of ['milliamps', 'amps'] as const) {
      const bench = new WorldBench().do({ kind: 'meter-jack', jack });
      bench.lead('meter-black', 'battery-negative').lead('meter-red', 'battery-positive').wait(1);
      expect(placesOf(bench, 'fuse-pop')).toEqual([`${jack}-jack`]);
    }
    const jumper = new WorldBench().lead('jumper-supply', 'battery-positive');
    jumper.lead('jumper-far', 'battery-negative').do({ kind: 'switch-jumper', on: true }).wait(5);
    expect(placesOf(jumper, 'fuse-pop')).toEqual(['jumper']);
  });

  test('a barb cracks at its port, and air hisses where it is let in', () => {
    const bench = new WorldBench().do({ kind: 'clamp', port: 'engine-port', setting: 'over-tight' });
    expect(placesOf(bench, 'barb-cracked')).toEqual(['engine-port']);
    const pumped = new WorldBench().do(
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      { kind: 'take-off', item: 'air-hose' },
      { kind: 'fit', item: 'cap-a', site: 'air-port' },
      { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
    );
    pumped.do({ kind: 'stroke', depth: 1 }).wait(2).do({ kind: 'take-off', item: 'pump-hose' });
    expect(placesOf(pumped, 'hiss')).toEqual(['canister-port']);
  });

  test('a click is at the unit; all of it is plain data', () => {
    const whole = drawn().wait(0.2);
    expect(placesOf(whole, 'click-on')).toEqual(['unit']);
    const { world } = whole;
    expect(JSON.parse(JSON.stringify(world.observe().happenings))).toEqual(world.observe().happenings);
  });
});

describe('a cracked barb', () => {
  test('is seen while nothing is on it, and a new unit has none', () => {
    const bench = new WorldBench().do({ kind: 'clamp', port: 'air-port', setting: 'over-tight' });
    const cracked = (): boolean => bench.world.observe().cracked['air-port'];
    expect(cracked()).toBe(false);
    bench.do({ kind: 'take-off', item: 'air-hose' });
    expect(cracked()).toBe(true);
    bench.do({ kind: 'fit', item: 'cap-a', site: 'air-port' });
    expect(cracked()).toBe(false);
    bench.do({ kind: 'take-off', item: 'cap-a' }, { kind: 'renew', item: 'unit' });
    expect(cracked()).toBe(false);
  });
});
