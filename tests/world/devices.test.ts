import { describe, expect, test } from 'vitest';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import { WorldBench } from '../support/worldBench.ts';

function clickBench(fault?: string, severity = 0.5): WorldBench {
  return new WorldBench(fault === undefined ? [] : [{ fault, severity }])
    .do({ kind: 'part-plug' })
    .lead('jumper-supply', 'battery-positive')
    .lead('jumper-far', 'unit-1')
    .lead('plain-a', 'battery-negative')
    .lead('plain-b', 'unit-2');
}

function tryClicks(bench: WorldBench, times: number): number {
  const before = bench.clicks();
  let heard = 0;
  for (let trial = 0; trial < times; trial++) {
    const count = bench.clicks();
    bench.do({ kind: 'switch-jumper', on: true }).wait(0.5);
    if (bench.clicks() > count || bench.world.inside().plunger === 'seated') heard += 1;
    bench.do({ kind: 'switch-jumper', on: false }).wait(0.5);
  }
  expect(before).toBe(0);
  return heard;
}

describe('devices', () => {
  test('a sound solenoid clicks on every time it is fed, and only when its plunger seats', () => {
    expect(tryClicks(clickBench(), 5)).toBe(5);
  });

  test('an open winding and a stuck plunger never click', () => {
    expect(tryClicks(clickBench('winding-open'), 3)).toBe(0);
    expect(tryClicks(clickBench('plunger-stuck'), 3)).toBe(0);
  });

  test('a sticky plunger clicks on some trials and not on others', () => {
    const heard = tryClicks(clickBench('plunger-sticky', 0.5), 12);
    expect(heard).toBeGreaterThan(2);
    expect(heard).toBeLessThan(12);
  });

  test('a stuck plunger draws coil current all the same', () => {
    const bench = clickBench('plunger-stuck').do({ kind: 'switch-jumper', on: true }).wait(0.5);
    expect(bench.world.inside().coilAmps).toBeGreaterThan(0.35);
    expect(bench.world.inside().plunger).toBe('rest');
  });

  test('coil resistance reads 32 Ω ± 6 % at 20 °C and more when warm', () => {
    const cold = new WorldBench().do({ kind: 'part-plug' }).meter('ohms').lead('meter-red', 'unit-1');
    const ohms = cold.lead('meter-black', 'unit-2').reading() ?? 0;
    expect(ohms).toBeGreaterThan(32 * 0.93);
    expect(ohms).toBeLessThan(32 * 1.07 + 0.5);
    const warm = new WorldBench([], { ambientC: 60 }).do({ kind: 'part-plug' }).meter('ohms');
    const hot = warm.lead('meter-red', 'unit-1').lead('meter-black', 'unit-2').reading() ?? 0;
    expect(hot / ohms).toBeCloseTo(1.157, 1);
  });

  test('a jumper shorted across the battery melts its own fuse and nothing else', () => {
    const bench = new WorldBench()
      .lead('jumper-supply', 'battery-positive')
      .lead('jumper-far', 'battery-negative');
    bench.do({ kind: 'switch-jumper', on: true }).wait(1);
    expect(bench.world.observe().jumper.fuse).toBe('melted');
    expect(bench.world.observe().happenings.some((one) => one.kind === 'fuse-pop')).toBe(true);
    bench.do({ kind: 'pull-fuse' });
    expect(bench.world.observe().fuse.element).toBe('whole');
  });

  test('an open meter lead reads nothing on the battery; new leads cure it', () => {
    const bench = new WorldBench([{ fault: 'meter-lead-open', severity: 0 }]).meter('volts-dc');
    bench.lead('meter-red', 'battery-positive').lead('meter-black', 'battery-negative');
    expect(Math.abs(bench.reading() ?? 99)).toBeLessThan(0.5);
    bench.do({ kind: 'renew', item: 'meter-leads' });
    expect(bench.reading()).toBeGreaterThan(12.5);
  });

  test('a leaking hand pump loses vacuum with its own hose plugged; a sound one keeps it', () => {
    const left = (fault: string | null): number => {
      const bench = new WorldBench(fault === null ? [] : [{ fault, severity: 0 }]);
      bench.do({ kind: 'fit', item: 'plug-a', site: 'pump-hose-end' });
      for (let strokes = 0; strokes < 6; strokes++) bench.stroke();
      const reached = bench.inHg;
      return bench.wait(60).inHg / reached;
    };
    expect(left(null)).toBeGreaterThan(0.98);
    expect(left('hand-pump-seal-leaking')).toBeLessThan(0.9);
  });

  test('behind a broken sense wire nothing is left of the pull-up, with a meter there or without', () => {
    const bare = new WorldBench([{ fault: 'sense-open', severity: 0 }]).do({
      kind: 'set-key',
      position: 'on',
    });
    expect(bare.wait(1).world.inside().senseVolts).toBeLessThan(0.15);
    const watched = new WorldBench([{ fault: 'sense-open', severity: 0 }]).senseWatched();
    expect(watched.reading()).toBeLessThan(0.05);
  });

  test('wrong connections read what they would read', () => {
    const swapped = new WorldBench().meter('volts-dc').lead('meter-red', 'battery-negative');
    expect(swapped.lead('meter-black', 'battery-positive').reading()).toBeLessThan(-12.5);
    const live = new WorldBench().meter('ohms').lead('meter-red', 'battery-positive');
    expect(live.lead('meter-black', 'battery-negative').wait(2).world.observe().meter.display.digits).toBe(
      'OL',
    );
  });

  test('renewing the item cures each truck fault as far as the sense line and the click can tell', () => {
    for (const fault of PUMP_FAULTS) {
      const bench = new WorldBench([{ fault: fault.id, severity: 1 }]).do({
        kind: 'renew',
        item: fault.item,
      });
      const spec = { seed: 'bench', faults: [], ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };
      const sound = new WorldBench([], spec).do({ kind: 'renew', item: fault.item });
      expect(bench.wait(1).world.hash(), fault.id).toBe(sound.wait(1).world.hash());
    }
  });

  test('a refused action leaves the world as it was', () => {
    const bench = new WorldBench().wait(1);
    const refused = bench.world.apply({ kind: 'place-lead', end: 'meter-red', point: 'unit-1' });
    expect(refused).toEqual({ ok: false, error: 'point-needs-parted-plug' });
    const pinless = bench.world.apply({ kind: 'place-lead', end: 'meter-red', point: 'cavity-3-back' });
    expect(pinless).toEqual({ ok: false, error: 'point-needs-pin' });
    const before = new WorldBench().wait(1).world.observe();
    expect(bench.world.observe()).toEqual(before);
  });
});
