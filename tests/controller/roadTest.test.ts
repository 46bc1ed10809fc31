import { describe, expect, test } from 'vitest';
import type { CodeStatus, TroubleCode } from '../../src/sim/devices/controller/troubleCodes.ts';
import type { ItemId } from '../../src/sim/devices/items.ts';
import type { Action, Refusal } from '../../src/sim/world/Action.ts';
import { driveCycle } from '../../src/sim/world/driveCycle.ts';
import type { DriveCycle, DriveReport } from '../../src/sim/world/Observation.ts';
import { Rig } from '../../src/sim/world/Rig.ts';
import { createWorld, restoreWorld } from '../../src/sim/world/World.ts';
import type { FaultChoice, WorldSpec } from '../../src/sim/world/WorldPort.ts';
import { WorldBench } from '../support/worldBench.ts';

const road = (cycles: number): Action => ({ kind: 'road-test', cycles });
const renew = (item: ItemId): Action => ({ kind: 'renew', item });

function drive(bench: WorldBench, cycles: number): DriveReport {
  const report = bench.do(road(cycles)).world.observe().lastDrive;
  if (report === null) throw new Error('no report');
  return report;
}

function codes(bench: WorldBench, status: CodeStatus): TroubleCode[] {
  bench.do({ kind: 'set-key', position: 'on' });
  const { reader } = bench.world.observe();
  bench.do({ kind: 'set-key', position: 'off' });
  return reader.codes.filter((one) => one.status === status).map(({ code }) => code);
}

const ran = ({ cycles }: DriveReport): readonly DriveCycle[] =>
  cycles.filter(({ outcome }) => outcome !== 'not-run');
const bad = (fault: string, severity = 0.5): FaultChoice => ({ fault, severity });
const refusalOf = (bench: WorldBench, action: Action = road(1)): Refusal | null => {
  const done = bench.world.apply(action);
  return done.ok ? null : done.error;
};

/** A new unit stands bare: its hoses, clamps and plug are the fitter's to put back. */
function fitBack(bench: WorldBench): WorldBench {
  for (const [item, site] of [
    ['canister-hose', 'canister-port'],
    ['air-hose', 'air-port'],
    ['engine-hose', 'engine-port'],
  ] as const) {
    bench.do({ kind: 'fit', item, site }, { kind: 'clamp', port: site, setting: 'hand-tight' });
  }
  return bench.do({ kind: 'mate-plug' });
}

describe('a sound truck', () => {
  test('passes whenever the monitor runs; the bench’s clock stands still and its miles grow', () => {
    const bench = new WorldBench();
    const tick = bench.world.tick;
    const report = drive(bench, 12);
    expect(bench.world.tick).toBe(tick);
    expect(report.cycles).toHaveLength(12);
    for (const { miles } of report.cycles) {
      expect(miles).toBeGreaterThanOrEqual(18);
      expect(miles).toBeLessThanOrEqual(42);
    }
    expect(bench.world.observe().miles).toBe(report.miles);
    expect(report.miles).toBe(report.cycles.reduce((sum, { miles }) => sum + miles, 0));
    expect(new Set(report.cycles.map(({ outcome }) => outcome))).toEqual(new Set(['passed', 'not-run']));
    expect(report.cycles.some(({ lamp }) => lamp)).toBe(false);
    bench.do({ kind: 'set-key', position: 'on' });
    expect(bench.world.observe().reader).toMatchObject({
      codes: [],
      monitor: { phase: 'passed', complete: true },
    });
  });

  test.each([{ ambientC: 3 }, { ambientC: 36 }, { fuelLevel: 0.1 }, { fuelLevel: 0.9 }])(
    'never lets the monitor run out of its conditions: %o',
    (out) => {
      const report = drive(new WorldBench([], out), 6);
      expect(report.cycles.every(({ outcome, limits }) => outcome === 'not-run' && limits === null)).toBe(
        true,
      );
    },
  );

  test('reports limits that scale with the fuel level', () => {
    const [half] = ran(drive(new WorldBench([], { fuelLevel: 0.5 }), 6));
    const [low] = ran(drive(new WorldBench([], { fuelLevel: 0.15 }), 6));
    expect((low?.limits?.passSeconds ?? 0) / (half?.limits?.passSeconds ?? 1)).toBeCloseTo(66.35 / 40.1, 6);
  });

  test('comes back with the air at rest and everything else as it was left', () => {
    const bench = new WorldBench().do({ kind: 'set-meter', function: 'ohms' });
    const { lastDrive: _a, miles: _b, ...before } = bench.world.observe();
    const { lastDrive, miles, ...after } = bench.do(road(3)).world.observe();
    expect(after).toEqual(before);
    expect(lastDrive?.miles).toBe(miles);
    expect(bench.world.inside()).toMatchObject({ vacuumSwitch: 'open', ventSeat: 'open', canisterKPa: 0 });
  });
});

test('no sound truck gets a code: any tolerances, fuel level, altitude and temperature that the monitor runs at', () => {
  for (let n = 0; n < 24; n++) {
    const fuelLevel = [0.15, 0.3, 0.5, 0.7, 0.85][n % 5] as number;
    const altitudeM = [0, 1500, 3000][n % 3] as number;
    const ambientC = [4, 20, 35, 12][n % 4] as number;
    const rig = new Rig({ seed: `sound truck ${n}`, faults: [], ambientC, altitudeM, fuelLevel });
    const facts = driveCycle(rig, 1, { soaked: true, cruised: true });
    expect(facts, `truck ${n}`).toMatchObject({
      outcome: 'passed',
      freeze: [],
      damage: [],
      fuseMelted: false,
    });
    // With room to spare: a fifth above the least strokes a litre, under half the trip limit, twice the passing hold.
    const litres = (1 - fuelLevel) * 75 + 2.6;
    expect(facts.strokes / litres).toBeGreaterThan(1.15);
    expect((facts.tripSeconds ?? 999) / (facts.limits?.tripSeconds ?? 1)).toBeLessThan(0.5);
    expect((facts.holdSeconds ?? 0) / (facts.limits?.passSeconds ?? 999)).toBeGreaterThan(2);
  }
});

describe('what keeps the truck in the shop', () => {
  const onTruck: readonly [string, (bench: WorldBench) => void][] = [
    ['a pin in a cavity', (b) => b.pin(2)],
    ['a lead on the battery', (b) => b.lead('meter-red', 'battery-positive')],
    ['the jumper at the fuse', (b) => b.lead('jumper-supply', 'fuse-in')],
    ['the hand pump on a port', (b) => b.pumpOn('open')],
    [
      'a cap on a port',
      (b) => b.do({ kind: 'take-off', item: 'air-hose' }, { kind: 'fit', item: 'cap-a', site: 'air-port' }),
    ],
    [
      'a plug in a truck’s hose',
      (b) =>
        b.do({ kind: 'take-off', item: 'air-hose' }, { kind: 'fit', item: 'plug-a', site: 'air-hose-end' }),
    ],
  ];
  test.each(onTruck)('%s', (_what, put) => {
    const bench = new WorldBench();
    put(bench);
    expect(refusalOf(bench)).toBe('tools-on-the-truck');
  });

  test('the key not off', () => {
    expect(refusalOf(new WorldBench().do({ kind: 'set-key', position: 'on' }))).toBe('key-must-be-off');
  });

  test('leads on the bench supply alone do not', () => {
    expect(refusalOf(new WorldBench().lead('meter-red', 'supply-positive'))).toBeNull();
  });

  test.each([0, 21, 1.5])('%d cycles cannot be driven', (cycles) => {
    expect(refusalOf(new WorldBench(), road(cycles))).toBe('cannot-be-reached');
  });
});

describe('left as it was, it fails as it would', () => {
  test('plug apart: P2400 on every drive, stored on the second', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' });
    const report = drive(bench, 3);
    expect(report.cycles.map(({ codes: found }) => found)).toEqual([['P2400'], ['P2400'], ['P2400']]);
    expect(report.cycles.map(({ lamp }) => lamp)).toEqual([false, true, true]);
    expect(codes(bench, 'stored')).toEqual(['P2400']);
  });

  test('canister hose off: a large leak', () => {
    const bench = new WorldBench().do({ kind: 'take-off', item: 'canister-hose' });
    expect(new Set(ran(drive(bench, 6)).flatMap(({ codes: found }) => found))).toEqual(new Set(['P0455']));
  });
});

describe('a repair on the road', () => {
  test('the wrong part brings the code back after clearing, the right one puts the lamp out after three passes', () => {
    const bench = new WorldBench([bad('capsule-torn')]);
    expect(new Set(ran(drive(bench, 8)).flatMap(({ codes: found }) => found))).toEqual(new Set(['P0456']));
    expect(codes(bench, 'stored')).toEqual(['P0456']);

    bench.do(renew('filler-cap'), { kind: 'set-key', position: 'on' }, { kind: 'clear-codes' });
    expect(bench.world.observe().reader.codes).toEqual([{ code: 'P0456', status: 'permanent' }]);
    bench.do({ kind: 'set-key', position: 'off' });
    drive(bench, 8);
    expect(codes(bench, 'stored')).toEqual(['P0456']);

    fitBack(bench.do(renew('unit')));
    const after = drive(bench, 12);
    expect(ran(after).every(({ outcome }) => outcome === 'passed')).toBe(true);
    const passes = after.cycles.map(({ outcome }) => outcome === 'passed');
    const thirdPass = passes.findIndex((_, i) => passes.slice(0, i + 1).filter((one) => one).length === 3);
    expect(after.cycles.map(({ lamp }) => lamp)).toEqual(passes.map((_, i) => i < thirdPass));
    expect(codes(bench, 'permanent')).toEqual([]);
    expect(codes(bench, 'pending')).toEqual([]);
  });

  test('freeze data tell the miles of the first failure', () => {
    const bench = new WorldBench([bad('capsule-torn')]);
    const report = drive(bench, 8);
    const first = report.cycles.findIndex(({ outcome }) => outcome === 'failed');
    const miles = report.cycles.slice(0, first + 1).reduce((sum, one) => sum + one.miles, 0);
    bench.do({ kind: 'set-key', position: 'on' });
    const [freeze] = bench.world.observe().reader.freeze;
    expect(freeze).toMatchObject({ code: 'P0456', miles, fuelPercent: 50, ambientC: 20 });
    expect(freeze?.strokes).toBe(report.cycles[first]?.strokes);
    expect(freeze?.holdSeconds).toBe(report.cycles[first]?.holdSeconds);
  });

  test('the known-good unit on the truck passes; the truck’s own, put back, fails again', () => {
    const bench = new WorldBench([bad('capsule-torn')]);
    const bare = () =>
      bench.do(
        { kind: 'part-plug' },
        { kind: 'take-off', item: 'canister-hose' },
        { kind: 'take-off', item: 'air-hose' },
        { kind: 'take-off', item: 'engine-hose' },
      );
    fitBack(bare().do({ kind: 'swap-unit', to: 'known-good' }));
    expect(ran(drive(bench, 4)).every(({ outcome }) => outcome === 'passed')).toBe(true);
    fitBack(bare().do({ kind: 'swap-unit', to: 'truck' }));
    expect(ran(drive(bench, 4)).every(({ outcome }) => outcome === 'failed')).toBe(true);
  });

  test('a root cause left in place spoils the new part after two drives; renewed too, it does not', () => {
    const rooted: FaultChoice = { fault: 'switch-stuck-closed', severity: 0, root: 'water-in-filter' };
    const faults = [rooted, bad('water-in-filter', 0)];
    const bench = fitBack(new WorldBench(faults).do(renew('unit')));
    const report = drive(bench, 9);
    const first = report.cycles.findIndex(({ outcome }) => outcome === 'circuit-fault');
    expect(first).toBeGreaterThanOrEqual(2);
    expect(report.cycles.slice(0, 2).every(({ codes: found }) => found.length === 0)).toBe(true);
    expect(report.cycles[first]?.codes).toEqual(['P2405']);

    const cured = fitBack(new WorldBench(faults).do(renew('unit'), renew('filter')));
    expect(ran(drive(cured, 9)).every(({ outcome }) => outcome === 'passed')).toBe(true);

    const again = fitBack(bench.do(renew('unit'), renew('filter')));
    expect(ran(drive(again, 9)).every(({ outcome }) => outcome === 'passed')).toBe(true);
  });
});

describe('drives before the work order', () => {
  const spec = (drives: WorldSpec['drives'], faults = [bad('capsule-torn')]): WorldSpec => ({
    seed: 'customer',
    faults,
    ambientC: 18,
    altitudeM: 200,
    fuelLevel: 0.45,
    ...(drives === undefined ? {} : { drives }),
  });

  test('fill the memory; the miles end at nought and the freeze data lie before it', () => {
    const world = createWorld(spec({ cycles: 10, refuelled: false }));
    expect(world.observe()).toMatchObject({ miles: 0, lastDrive: null, dashLamp: false });
    world.apply({ kind: 'set-key', position: 'running' });
    const { reader, dashLamp } = world.observe();
    expect(dashLamp).toBe(true);
    expect(reader.codes).toContainEqual({ code: 'P0456', status: 'stored' });
    expect(reader.freeze[0]?.miles).toBeLessThan(0);
    expect(reader.monitor).toMatchObject({ phase: 'failed', complete: true });
  });

  test('a large leak that came right after refuelling is put down to the cap', () => {
    const cap = [bad('switch-stuck-open', 0)];
    const stored = (refuelled: boolean) => {
      const world = createWorld(spec({ cycles: 8, refuelled }, cap));
      world.apply({ kind: 'set-key', position: 'on' });
      return world.observe().reader.codes.filter(({ status }) => status === 'stored');
    };
    expect(stored(true)).toEqual([{ code: 'P0457', status: 'stored' }]);
    expect(stored(false)).toEqual([{ code: 'P0455', status: 'stored' }]);
  });

  test('are not driven again when a world is restored, and its road tests go on counting from there', () => {
    const one = spec({ cycles: 10, refuelled: false });
    const world = createWorld(one);
    const restored = restoreWorld(one, JSON.parse(JSON.stringify(world.snapshot())));
    expect(restored.hash()).toBe(world.hash());
    for (const each of [world, restored]) each.apply(road(5));
    expect(restored.hash()).toBe(world.hash());
    const other = createWorld(spec(undefined));
    other.apply(road(5));
    expect(other.observe().lastDrive?.cycles.map(({ miles }) => miles)).not.toEqual(
      world.observe().lastDrive?.cycles.map(({ miles }) => miles),
    );
  });
});

describe('determinism', () => {
  const LOOSE: readonly FaultChoice[] = [
    { fault: 'sense-open', severity: 0, whenMoved: true },
    bad('terminal-1-spread', 0.7),
    bad('plunger-sticky', 0.4),
  ];

  test('the same truck driven the same way ends in the same state, however the cycles are cut into drives', () => {
    const hash = (...drives: number[]) => {
      const bench = new WorldBench(LOOSE);
      for (const cycles of drives) drive(bench, cycles);
      const { lastDrive: _, ...state } = bench.world.snapshot().state;
      return JSON.stringify(state);
    };
    expect(hash(4)).toBe(hash(4));
    expect(hash(1, 2, 1)).toBe(hash(4));
  });

  test('a kept outcome is what the cycle gives when it is run again', () => {
    for (const faults of [
      [bad('capsule-torn')],
      [bad('feed-open', 0)],
      [bad('filler-cap-leaking', 1)],
      LOOSE,
    ]) {
      const rig = new Rig({ seed: 'kept', faults, ambientC: 20, altitudeM: 0, fuelLevel: 0.5 });
      const met = { soaked: true, cruised: true };
      const kept = driveCycle(rig, 1, met);
      expect(driveCycle(rig, 1, met)).toEqual(kept);
      expect(driveCycle(rig, 1, met, false)).toEqual(kept);
    }
  });

  test('chance plays its part anew in every cycle', () => {
    const report = drive(new WorldBench([bad('plunger-sticky', 0.5)]), 8);
    expect(new Set(ran(report).map(({ strokes }) => strokes)).size).toBeGreaterThan(2);
  });
});
