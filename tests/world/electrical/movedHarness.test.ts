import { describe, expect, test } from 'vitest';
import { Random } from '../../../src/base/Random.ts';
import type { WigglePlace } from '../../../src/sim/devices/places.ts';
import { restoreWorld } from '../../../src/sim/world/World.ts';
import type { FaultChoice } from '../../../src/sim/world/WorldPort.ts';
import { WorldBench } from '../../support/worldBench.ts';

const LOOSE_GROUND: FaultChoice = { fault: 'ground-open', severity: 0, whenMoved: true };

/** Sense low seen through the ground: near 0 V while it holds, high while it is open. */
function groundWatched(seed: string, faults: readonly FaultChoice[]): WorldBench {
  return new WorldBench(faults, { seed }).do(
    { kind: 'set-key', position: 'on' },
    { kind: 'command-solenoid', command: 'on' },
  );
}

const coilAmps = (bench: WorldBench): number => bench.world.inside().coilAmps;

/** Coil current at each hundredth of the second that the harness is moved. */
function whileMoved(bench: WorldBench, at: WigglePlace): number[] {
  bench.do({ kind: 'wiggle', at });
  return Array.from({ length: 100 }, () => coilAmps(bench.wait(0.01)));
}

describe('a ground that opens when the harness is moved', () => {
  test('shows its bad face on some trucks at the start and hides it on others', () => {
    const opens = Array.from({ length: 12 }, (_, i) => {
      const bench = groundWatched(`truck ${i}`, [LOOSE_GROUND]).wait(1);
      return coilAmps(bench) < 0.01;
    });
    expect(opens).toContain(true);
    expect(opens).toContain(false);
  });

  test('comes and goes while its own stretch is moved, and stays as the last jolt left it', () => {
    const bench = groundWatched('truck', [LOOSE_GROUND]).wait(1);
    const amps = whileMoved(bench, 'ground');
    expect(Math.min(...amps)).toBeLessThan(0.01);
    expect(Math.max(...amps)).toBeGreaterThan(0.3);
    bench.wait(0.2);
    const left = coilAmps(bench);
    expect(coilAmps(bench.wait(20))).toBeCloseTo(left, 3);
  });

  test('does not stir while another wire is moved; moving the plug moves it a little', () => {
    const bench = groundWatched('truck', [LOOSE_GROUND]).wait(1);
    const before = coilAmps(bench);
    for (const amps of whileMoved(bench, 'feed')) expect(amps).toBeCloseTo(before, 2);
    const turns = (at: WigglePlace): number => {
      let count = 0;
      for (let i = 0; i < 4; i++) {
        const seen = whileMoved(groundWatched(`turns ${i}`, [LOOSE_GROUND]).wait(1), at);
        count += seen.filter((amps, k) => k > 0 && amps < 0.1 !== (seen[k - 1] as number) < 0.1).length;
      }
      return count;
    };
    const along = turns('plug');
    expect(along).toBeGreaterThan(0);
    expect(along).toBeLessThan(turns('ground'));
  });

  test('a steady fault does not come and go', () => {
    const steady = groundWatched('truck', [{ fault: 'ground-open', severity: 0 }]).wait(1);
    for (const amps of whileMoved(steady, 'ground')) expect(amps).toBeLessThan(0.01);
  });

  test('is cured by renewing the wire', () => {
    const bench = groundWatched('truck', [LOOSE_GROUND]).wait(1);
    bench.do({ kind: 'renew', item: 'ground-wire' }).wait(1);
    for (const amps of whileMoved(bench, 'ground')) expect(amps).toBeGreaterThan(0.3);
  });
});

describe('a spread terminal', () => {
  const spread = (severity: number): WorldBench =>
    groundWatched('truck', [{ fault: 'terminal-1-spread', severity }]).wait(1);

  test('adds a little resistance, opens while the plug is moved, and touches again when it is let go', () => {
    const bench = spread(1);
    const before = coilAmps(bench);
    expect(before).toBeGreaterThan(0.33);
    const amps = whileMoved(bench, 'plug');
    expect(Math.min(...amps)).toBeLessThan(0.05);
    expect(coilAmps(bench.wait(0.5))).toBeCloseTo(before, 3);
  });

  test('opens more often the further it is spread', () => {
    const open = (severity: number): number =>
      whileMoved(spread(severity), 'plug').filter((amps) => amps < 0.2).length;
    expect(open(1)).toBeGreaterThan(open(0));
  });

  test('a sound plug never opens', () => {
    for (const amps of whileMoved(groundWatched('truck', []).wait(1), 'plug')) {
      expect(amps).toBeGreaterThan(0.33);
    }
  });
});

describe('moving the harness', () => {
  test('lasts a second, shows in what is seen, and cannot be begun twice', () => {
    const bench = new WorldBench().wait(0.1).do({ kind: 'wiggle', at: 'sense' });
    expect(bench.world.observe().wiggling).toBe('sense');
    expect(bench.world.apply({ kind: 'wiggle', at: 'plug' })).toEqual({ ok: false, error: 'already-so' });
    expect(bench.wait(0.9).world.observe().wiggling).toBe('sense');
    expect(bench.wait(0.2).world.observe().wiggling).toBe(null);
  });

  test('a snapshot taken with the hand on the harness goes on to the same last bit', () => {
    const faults = [LOOSE_GROUND, { fault: 'terminal-1-spread', severity: 1 }];
    const bench = groundWatched('snapshot', faults).wait(0.3).do({ kind: 'wiggle', at: 'plug' }).wait(0.437);
    const spec = { seed: 'snapshot', faults, ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };
    const resumed = restoreWorld(spec, JSON.parse(JSON.stringify(bench.world.snapshot())));
    expect(resumed.hash()).toBe(bench.world.hash());
    bench.wait(3);
    resumed.advanceTo(bench.world.tick);
    expect(resumed.hash()).toBe(bench.world.hash());
  });

  test('how time is cut changes nothing, to the last bit', () => {
    const run = (cuts: string | null): string => {
      const bench = groundWatched('cuts', [
        LOOSE_GROUND,
        { fault: 'terminal-3-spread', severity: 1 },
        { fault: 'sense-to-ground', severity: 0.5, whenMoved: true },
      ]);
      const random = Random.of(cuts ?? '', 'cuts');
      const to = (seconds: number): void => {
        const end = bench.world.tick + Math.round(seconds * 20_000);
        while (cuts !== null && bench.world.tick < end) {
          const piece = 1 + Math.floor(random.next() * random.next() * 3000);
          bench.world.advanceTo(Math.min(bench.world.tick + piece, end));
        }
        bench.world.advanceTo(end);
      };
      for (const at of ['plug', 'ground', 'sense', 'plug'] as const) {
        to(0.3);
        bench.do({ kind: 'wiggle', at });
        to(1.1);
      }
      expect(bench.world.unsolvedSteps).toBe(0);
      return bench.world.hash();
    };
    const whole = run(null);
    for (const cuts of ['a', 'b', 'c']) expect(run(cuts)).toBe(whole);
  });
});
