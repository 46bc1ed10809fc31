import { describe, expect, test } from 'vitest';
import type { LeadPoint } from '../../../src/sim/devices/places.ts';
import { WorldBench } from '../../support/worldBench.ts';

/** What each electrical fault does to a reading that a technician takes. Numbers by hand from the rig's resistances. */
function faulty(fault: string, severity = 0.5): WorldBench {
  return new WorldBench([{ fault, severity }]);
}

function driven(bench: WorldBench): WorldBench {
  return bench.do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' }).wait(0.5);
}

function ohmsOfUnit(bench: WorldBench, red: LeadPoint, black: LeadPoint): number {
  bench.do({ kind: 'part-plug' }).meter('ohms').lead('meter-red', red).lead('meter-black', black);
  return bench.reading() ?? Number.POSITIVE_INFINITY;
}

describe('coil', () => {
  test('with a third of its turns shorted it measures a third less and takes half as much again', () => {
    const sound = ohmsOfUnit(new WorldBench(), 'unit-1', 'unit-2');
    // Half of the range from 0.15 to 0.5 is 0.325.
    const shorted = ohmsOfUnit(faulty('turns-shorted'), 'unit-1', 'unit-2');
    expect((shorted - 0.2) / (sound - 0.2)).toBeCloseTo(0.675, 2);
    const amps = driven(faulty('turns-shorted')).world.inside().coilAmps;
    expect(amps / driven(new WorldBench()).world.inside().coilAmps).toBeCloseTo(1 / 0.675, 1);
  });

  test('fewer turns need more current: behind 21 Ω in the ground a sound one still clicks, one of half its turns does not', () => {
    const ground = { fault: 'ground-resistance', severity: 0.78 };
    const sound = driven(new WorldBench([ground]));
    const half = driven(new WorldBench([ground, { fault: 'turns-shorted', severity: 1 }]));
    expect(sound.world.inside().plunger).toBe('seated');
    // Sound: 12.6 V over 53 Ω is 0.24 A, and 0.19 A are enough. Half: 12.6 V over 37 Ω is 0.34 A of the 0.38 A it needs.
    expect(half.world.inside().coilAmps).toBeGreaterThan(sound.world.inside().coilAmps);
    expect(half.world.inside().plunger).toBe('rest');
  });

  test('a plunger stuck drawn is seated before and after, and never clicks', () => {
    const bench = faulty('plunger-stuck-drawn');
    expect(bench.wait(0.1).world.inside().plunger).toBe('seated');
    driven(bench).do({ kind: 'command-solenoid', command: 'off' }).wait(0.5);
    expect(bench.world.inside().plunger).toBe('seated');
    expect(bench.world.observe().happenings.some(({ kind }) => kind.startsWith('click'))).toBe(false);
  });
});

describe('vacuum switch', () => {
  test('an intermittent contact misses some trips for the whole of the trip, and makes on others', () => {
    const bench = faulty('switch-intermittent', 0.7).pumpOn().senseWatched();
    const closed: boolean[] = [];
    for (let trip = 0; trip < 16; trip++) {
      bench.stroke(0.6);
      const first = bench.world.inside().vacuumSwitch;
      expect(bench.wait(1).world.inside().vacuumSwitch).toBe(first);
      closed.push(first === 'closed');
      bench.release();
      expect(bench.world.inside().vacuumSwitch).toBe('open');
    }
    expect(closed).toContain(true);
    expect(closed).toContain(false);
  });

  test('contact resistance leaves the sense line in between when it should be low', () => {
    const bench = faulty('switch-resistance', 0.8).pumpOn().senseWatched().stroke();
    const volts = bench.reading() ?? 0;
    expect(volts).toBeGreaterThan(2);
    expect(volts).toBeLessThan(6);
  });
});

describe('controller', () => {
  test('a dead driver never feeds the coil; one stuck on feeds it whenever the key is on', () => {
    expect(driven(faulty('driver-dead')).world.inside().coilAmps).toBeLessThan(0.001);
    const stuck = faulty('driver-stuck-on').do({ kind: 'set-key', position: 'on' }).wait(0.5);
    expect(stuck.world.inside().coilAmps).toBeGreaterThan(0.35);
    stuck.do({ kind: 'set-key', position: 'off' }).wait(0.5);
    expect(stuck.world.inside().coilAmps).toBeLessThan(0.001);
  });

  test('a driver stuck on into a shorted feed has no limit: it takes the truck fuse with it', () => {
    const bench = new WorldBench([
      { fault: 'driver-stuck-on', severity: 0 },
      { fault: 'feed-to-ground', severity: 1 },
    ]);
    // 1 Ω to ground and 0.13 Ω of wire behind 0.3 Ω: some 9 A, and the coil: under the fuse's 122 %.
    bench.do({ kind: 'set-key', position: 'on' }).wait(1);
    expect(bench.world.observe().reader.driver).not.toBe('latched');
    bench.lead('plain-a', 'controller-feed').lead('plain-b', 'chassis-stud').wait(2);
    expect(bench.do({ kind: 'pull-fuse' }).world.observe().fuse.element).toBe('melted');
  });

  test('without its pull-up the sense line reads next to nothing', () => {
    expect(faulty('pull-up-lost').senseWatched().reading()).toBeLessThan(1);
  });
});

describe('harness', () => {
  test('feed chafed to ground by 2 Ω latches the driver off', () => {
    const bench = faulty('feed-to-ground', 0.85);
    bench.do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' }).wait(0.1);
    expect(bench.world.observe().reader.driver).toBe('latched');
  });

  test('feed chafed to battery holds the coil on with the key off', () => {
    const bench = faulty('feed-to-battery').wait(0.5);
    expect(bench.world.inside().plunger).toBe('seated');
  });

  test('80 Ω in the feed and the coil takes too little to pull in', () => {
    const bench = driven(new WorldBench([{ fault: 'feed-resistance', severity: 1 }]));
    // 12.6 V over 32 + 80 Ω is 0.11 A.
    expect(bench.world.inside().coilAmps).toBeCloseTo(0.112, 2);
    expect(bench.world.inside().plunger).toBe('rest');
  });

  test('sense chafed to battery stands above 10 V, and the switch pulls it down only as far as the chafe lets it', () => {
    const bench = faulty('sense-to-battery', 0).senseWatched();
    expect(bench.world.observe().reader.senseState).toBe('high');
    expect(bench.reading()).toBeGreaterThan(12);
  });

  test('moisture between cavities 2 and 3 pulls the sense line down: 500 Ω to 1.7 V, 20 kΩ to 8.1 V', () => {
    // 8.92 V behind 2.157 kΩ: 8.92 × 500 / 2657 and 8.92 × 20 / 22.157.
    expect(Math.abs((faulty('moisture-2-3', 1).senseWatched().reading() ?? 0) - 1.68)).toBeLessThan(0.15);
    expect(Math.abs((faulty('moisture-2-3', 0).senseWatched().reading() ?? 0) - 8.05)).toBeLessThan(0.3);
  });

  test('moisture between cavities 1 and 2 takes the ghost volts off the parted feed', () => {
    const ghost = (bench: WorldBench): number =>
      bench
        .do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' })
        .meter('volts-dc')
        .lead('meter-red', 'harness-1')
        .lead('meter-black', 'battery-negative')
        .reading() ?? 0;
    expect(ghost(new WorldBench())).toBeGreaterThan(5.5);
    expect(ghost(faulty('moisture-1-2', 1))).toBeLessThan(0.12);
  });
});

describe('supply', () => {
  test('battery volts by charge: half full 12.25 V, nearly empty under 12 V, and softer under load', () => {
    const read = (bench: WorldBench): number =>
      bench
        .meter('volts-dc')
        .lead('meter-red', 'battery-positive')
        .lead('meter-black', 'battery-negative')
        .reading() ?? 0;
    expect(Math.abs(read(new WorldBench()) - 12.66)).toBeLessThan(0.1);
    expect(Math.abs(read(faulty('battery-weak', 0)) - 12.25)).toBeLessThan(0.1);
    expect(read(faulty('battery-weak', 1))).toBeLessThan(12.0);
    const sag = (bench: WorldBench): number => {
      const still = read(bench);
      driven(bench);
      return still - (bench.reading() ?? 0);
    };
    expect(sag(faulty('battery-weak', 1))).toBeGreaterThan(sag(new WorldBench()) + 0.01);
  });

  test('burnt key contacts drop volts over themselves only while the coil is driven', () => {
    const bench = faulty('key-contacts-burnt', 1).do({ kind: 'set-key', position: 'on' });
    bench.meter('volts-dc').lead('meter-red', 'battery-positive').lead('meter-black', 'fuse-in');
    expect(bench.reading()).toBeLessThan(0.05);
    bench.do({ kind: 'command-solenoid', command: 'on' });
    expect(bench.reading()).toBeGreaterThan(4);
  });
});
