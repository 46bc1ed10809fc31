import { describe, expect, test } from 'vitest';
import { restoreWorld, type WorldSnapshot } from '../../../src/sim/world/World.ts';
import { AirBench } from './AirBench.ts';

describe('what stays when something is renewed or damaged', () => {
  test('a drawn jar keeps its vacuum while a fuse, a wire or a canister is renewed', () => {
    const bench = new AirBench().jarOnCappedUnit().stroke().stroke().wait(5);
    const { inHg, inH2O } = bench;
    bench.do({ kind: 'renew', item: 'fuse' }, { kind: 'renew', item: 'sense-wire' });
    bench.do({ kind: 'renew', item: 'canister' });
    expect(bench.wait(1).inHg).toBeCloseTo(inHg, 6);
    expect(Math.abs(bench.inH2O - inH2O)).toBeLessThan(0.11);
    expect(bench.world.inside().canisterKPa).toBeGreaterThan(2);
  });

  test('a new unit comes with the room’s air in it, and the tools keep what they hold', () => {
    const bench = new AirBench().pumpOn().drawTo(10);
    const { inHg } = bench;
    bench.do({ kind: 'renew', item: 'unit' });
    expect(bench.world.inside().canisterKPa).toBe(0);
    expect(bench.inHg).toBeCloseTo(inHg, 6);
    expect(bench.wait(1).inHg).toBeLessThan(0.1); // its hose now lies open
  });

  test('so does the known-good unit, and the pump’s handle stays where it is', () => {
    const bench = new AirBench().pumpOn().drawTo(5).do({ kind: 'pump-handle', position: 1 }).wait(1);
    bench.bare('pump-hose', 'cap-a', 'engine-hose').do({ kind: 'part-plug' });
    bench.put('plug-a', 'pump-hose-end').wait(2);
    const { inHg } = bench;
    bench.do({ kind: 'swap-unit', to: 'known-good' });
    expect(bench.wait(2).inHg).toBeCloseTo(inHg, 6);
    expect(bench.world.observe().handPump.handle).toBe(1);
  });

  test('a capsule that tears under the hands loses vacuum from then on and not at once', () => {
    const bench = new AirBench().pumpOn();
    for (let n = 0; n < 6; n++) bench.stroke();
    const torn = bench.inHg;
    expect(torn).toBeGreaterThan(19);
    expect(bench.wait(0.5).inHg).toBeGreaterThan(torn - 2);
    expect(bench.wait(20).inHg).toBeLessThan(3);
    bench.do({ kind: 'renew', item: 'unit' }, { kind: 'mate-plug' });
    bench.put('pump-hose', 'canister-port').put('cap-a', 'air-port').drawTo(15);
    expect(bench.loss(20)).toBeLessThan(0.2);
  });

  test('a snapshot in the middle of smoke, strokes and pulses goes on to the last bit', () => {
    const spec = { seed: 'bench', faults: [], ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };
    const bench = new AirBench().jarOnRunningTruck().solenoid('pulse').wait(1.37);
    bench.bare('pump-hose').put('smoke-hose', 'jar-tee-a');
    bench.do({ kind: 'set-smoke', gas: 'inert', pa: 3000 }, { kind: 'stroke', depth: 1 }).wait(0.0731);
    const { world } = bench;
    const copy = restoreWorld(spec, JSON.parse(JSON.stringify(world.snapshot())) as WorldSnapshot);
    for (const ticks of [1, 700, 13, 4000, 90_000]) {
      copy.advanceTo(copy.tick + ticks);
      world.advanceTo(world.tick + ticks);
      expect(copy.observe()).toEqual(world.observe());
      expect(copy.inside()).toEqual(world.inside());
      expect(copy.hash()).toBe(world.hash());
    }
  });
});
