import { describe, expect, test } from 'vitest';
import type { HappeningKind } from '../../../src/sim/world/Observation.ts';
import { WorldBench } from '../../support/worldBench.ts';

function heard(bench: WorldBench, kind: HappeningKind): number {
  return bench.world.observe().happenings.filter((one) => one.kind === kind).length;
}

describe('test lamp', () => {
  test('on the battery it glows in full with a quarter of an ampere; its inrush is ten times that', () => {
    const bench = new WorldBench().lead('lamp-clip', 'battery-negative').lead('lamp-tip', 'battery-positive');
    bench.wait(0.0002);
    expect(bench.world.observe().testLamp.glow).toBeLessThan(0.05);
    bench.wait(1);
    expect(bench.world.observe().testLamp.glow).toBeGreaterThan(0.95);
    bench.do({ kind: 'lift-lead', end: 'lamp-tip' }).wait(1);
    expect(bench.world.observe().testLamp.glow).toBeLessThan(0.001);
  });

  test('on the sense line it stays dark and pulls the line down: the controller reads closed', () => {
    const bench = new WorldBench().senseWatched();
    bench.lead('lamp-clip', 'battery-negative').lead('lamp-tip', 'cavity-3-back').wait(1);
    expect(bench.world.observe().testLamp.glow).toBeLessThan(1e-3);
    expect(bench.world.observe().reader.senseState).toBe('closed');
    expect(bench.reading()).toBeLessThan(0.05);
  });

  test('on the driven feed it glows; on the unloaded feed of a controller that is off it takes the ghost volts away', () => {
    const bench = new WorldBench().pin(1).do({ kind: 'set-key', position: 'on' });
    bench.lead('lamp-clip', 'battery-negative').lead('lamp-tip', 'cavity-1-back').wait(1);
    expect(bench.world.observe().testLamp.glow).toBeLessThan(1e-3);
    bench.do({ kind: 'command-solenoid', command: 'on' }).wait(1);
    expect(bench.world.observe().testLamp.glow).toBeGreaterThan(0.8);
  });

  test('from the battery to the ground cavity it glows on a sound ground and is dark on an open one', () => {
    const bench = new WorldBench().pin(2).do({ kind: 'set-key', position: 'on' });
    bench.lead('lamp-clip', 'battery-positive').lead('lamp-tip', 'cavity-2-back').wait(1);
    expect(bench.world.observe().testLamp.glow).toBeGreaterThan(0.9);
    const open = new WorldBench([{ fault: 'ground-open', severity: 0 }]).pin(2);
    open.lead('lamp-clip', 'battery-positive').lead('lamp-tip', 'cavity-2-back').wait(1);
    expect(open.world.observe().testLamp.glow).toBeLessThan(0.001);
  });
});

describe('LED tester', () => {
  test('on the sense line it lights and lets the line fall to about 4 V', () => {
    const bench = new WorldBench().senseWatched();
    bench.lead('led-clip', 'battery-negative').lead('led-tip', 'cavity-3-back').wait(1);
    expect(bench.world.observe().ledTester.lit).toBe('forward');
    expect(Math.abs((bench.reading() ?? 0) - 4.1)).toBeLessThan(0.3);
  });

  test('the other way round it lights the other colour; on ghost volts behind 33 kΩ it is dark', () => {
    const bench = new WorldBench().lead('led-clip', 'battery-positive').lead('led-tip', 'battery-negative');
    expect(bench.wait(0.1).world.observe().ledTester.lit).toBe('reverse');
    const ghost = new WorldBench().do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' });
    ghost.lead('led-clip', 'battery-negative').lead('led-tip', 'harness-1').wait(1);
    expect(ghost.world.observe().ledTester.lit).toBe('dark');
  });
});

describe('bench supply', () => {
  const joined = (): WorldBench =>
    new WorldBench()
      .do({ kind: 'part-plug' })
      .lead('jumper-supply', 'supply-positive')
      .lead('jumper-far', 'unit-1')
      .lead('plain-a', 'supply-negative')
      .lead('plain-b', 'unit-2')
      .do({ kind: 'switch-supply', on: true });

  test('feeds the unit through the jumper: a click, 12 V and the coil amps on its own meters', () => {
    const bench = joined();
    expect(bench.wait(0.5).world.observe().supply.amps).toBeLessThan(1e-4);
    bench.do({ kind: 'switch-jumper', on: true }).wait(0.5);
    expect(bench.clicks()).toBe(1);
    const { supply } = bench.world.observe();
    expect(supply.volts).toBeCloseTo(12, 1);
    // The core takes 12 V over 2.2 kΩ beside the winding.
    expect(supply.amps).toBeCloseTo(bench.world.inside().coilAmps + 12 / 2200, 3);
    expect(supply.limiting).toBe(false);
  });

  test('a dead short holds it at 3 A, which the jumper fuse bears', () => {
    const bench = new WorldBench()
      .lead('jumper-supply', 'supply-positive')
      .lead('jumper-far', 'supply-negative');
    bench.do({ kind: 'switch-supply', on: true }, { kind: 'switch-jumper', on: true }).wait(5);
    const { supply, jumper } = bench.world.observe();
    expect(supply).toMatchObject({ on: true, limiting: true });
    expect(supply.amps).toBeCloseTo(3, 2);
    expect(supply.volts).toBeLessThan(0.5);
    expect(jumper.fuse).toBe('whole');
  });

  test('floats until it is joined, and is off when it is off', () => {
    const bench = new WorldBench().do({ kind: 'switch-supply', on: true }).meter('volts-dc');
    bench.lead('meter-red', 'supply-positive').lead('meter-black', 'supply-negative');
    expect(Math.abs((bench.reading() ?? 0) - 12)).toBeLessThan(0.1);
    bench.lead('meter-black', 'battery-negative');
    // 10 MΩ of the meter and 10 MΩ of the supply's own tie share the 12 V.
    expect(Math.abs((bench.reading() ?? 0) - 6)).toBeLessThan(0.2);
    bench.do({ kind: 'switch-supply', on: false });
    expect(Math.abs(bench.reading() ?? 9)).toBeLessThan(0.01);
    expect(bench.world.apply({ kind: 'switch-supply', on: false })).toEqual({
      ok: false,
      error: 'already-so',
    });
  });
});

describe('meter jacks', () => {
  test('volts in the amps jack short the battery: a spark, the 10 A fuse is gone, and new fuses cure it', () => {
    const bench = new WorldBench().meter('volts-dc').do({ kind: 'meter-jack', jack: 'amps' });
    bench.lead('meter-black', 'battery-negative').lead('meter-red', 'battery-positive').wait(1);
    expect(heard(bench, 'fuse-pop')).toBe(1);
    expect(heard(bench, 'spark')).toBe(1);
    expect(bench.do({ kind: 'meter-jack', jack: 'volts' }).reading()).toBeGreaterThan(12.5);
    bench.do({ kind: 'lift-lead', end: 'meter-red' }, { kind: 'renew', item: 'meter-fuses' });
    bench.do({ kind: 'meter-jack', jack: 'amps' }).lead('meter-red', 'battery-positive').wait(1);
    expect(heard(bench, 'fuse-pop')).toBe(2);
  });

  test('in the milliamps jack the same blows the 600 mA fuse at once', () => {
    const bench = new WorldBench().do({ kind: 'meter-jack', jack: 'milliamps' });
    bench.lead('meter-black', 'battery-negative').lead('meter-red', 'battery-positive').wait(0.1);
    expect(heard(bench, 'fuse-pop')).toBe(1);
  });

  test('the coil current passes the milliamps jack unharmed', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }, { kind: 'meter-jack', jack: 'milliamps' });
    bench.lead('plain-a', 'battery-negative').lead('plain-b', 'unit-2');
    bench.lead('meter-black', 'unit-1').lead('meter-red', 'battery-positive').wait(20);
    expect(heard(bench, 'fuse-pop')).toBe(0);
    // Fuse, shunt and leads add 1.6 Ω to the coil's 32.
    expect(bench.world.inside().coilAmps).toBeGreaterThan(0.34);
  });

  test('a meter whose fuse is blown from the start carries nothing in its milliamps jack', () => {
    const bench = new WorldBench([{ fault: 'meter-fuse-blown', severity: 0 }]);
    bench.do({ kind: 'part-plug' }, { kind: 'meter-jack', jack: 'milliamps' });
    bench.lead('plain-a', 'battery-negative').lead('plain-b', 'unit-2');
    bench.lead('meter-black', 'unit-1').lead('meter-red', 'battery-positive').wait(1);
    expect(bench.world.inside().coilAmps).toBeLessThan(1e-6);
    expect(heard(bench, 'fuse-pop')).toBe(0);
  });
});

describe('ghost volts on the parted feed', () => {
  const ghost = (to: 'volts-dc' | 'volts-low-z'): number =>
    new WorldBench()
      .do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' })
      .meter(to)
      .lead('meter-red', 'harness-1')
      .lead('meter-black', 'battery-negative')
      .reading() ?? Number.NaN;

  test('5.5 to 5.9 V at 10 MΩ, half a volt at 3 kΩ', () => {
    expect(ghost('volts-dc')).toBeGreaterThan(5.5);
    expect(ghost('volts-dc')).toBeLessThan(5.9);
    // 5.8 V × 3 / 36.
    expect(Math.abs(ghost('volts-low-z') - 0.483)).toBeLessThan(0.03);
  });
});

describe('renewing one thing', () => {
  test('leaves the rest as it is: the solenoid stays drawn, a melted jumper fuse stays melted', () => {
    const bench = new WorldBench()
      .lead('jumper-supply', 'battery-positive')
      .lead('jumper-far', 'chassis-stud');
    bench.do({ kind: 'switch-jumper', on: true }).wait(0.5);
    bench.do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' }).wait(0.5);
    const before = bench.world.inside().coilAmps;
    bench.do({ kind: 'renew', item: 'meter-leads' }).wait(0.5);
    expect(bench.world.inside().coilAmps).toBeCloseTo(before, 6);
    expect(bench.clicks()).toBe(1);
    expect(bench.world.observe().jumper.fuse).toBe('melted');
    bench.do({ kind: 'renew', item: 'jumper' });
    expect(bench.world.observe().jumper.fuse).toBe('whole');
    expect(heard(bench.wait(0.5), 'fuse-pop')).toBe(2);
  });
});

describe('jumper and plain lead', () => {
  test('a jumper with a blown fuse feeds nothing; a new fuse does', () => {
    const bench = new WorldBench([{ fault: 'jumper-fuse-blown', severity: 0 }]).do({ kind: 'part-plug' });
    bench.lead('jumper-supply', 'battery-positive').lead('jumper-far', 'unit-1');
    bench.lead('plain-a', 'battery-negative').lead('plain-b', 'unit-2');
    bench.do({ kind: 'switch-jumper', on: true }).wait(0.5);
    expect(bench.clicks()).toBe(0);
    bench.do({ kind: 'renew-jumper-fuse' }).wait(0.5);
    expect(bench.clicks()).toBe(1);
  });

  test('the plain lead has no fuse: across the battery it burns within half a second, with a spark, and stays burnt', () => {
    const bench = new WorldBench().lead('plain-a', 'battery-negative').lead('plain-b', 'battery-positive');
    bench.wait(0.1);
    expect(heard(bench, 'lead-burnt')).toBe(0);
    bench.wait(0.4);
    expect(heard(bench, 'lead-burnt')).toBe(1);
    expect(heard(bench, 'spark')).toBeGreaterThan(0);
    const click = (): number => {
      bench.lead('plain-b', 'unit-2').lead('jumper-supply', 'battery-positive').lead('jumper-far', 'unit-1');
      return bench.do({ kind: 'switch-jumper', on: true }).wait(0.5).clicks();
    };
    bench.do({ kind: 'part-plug' });
    expect(click()).toBe(0);
    bench.do({ kind: 'renew', item: 'plain-lead' }).wait(0.5);
    expect(bench.clicks()).toBe(1);
  });

  test('breaking the unclamped coil by the jumper switch sparks each time and burns its contacts a little more', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' });
    bench.lead('jumper-supply', 'battery-positive').lead('jumper-far', 'unit-1');
    bench.lead('plain-a', 'battery-negative').lead('plain-b', 'unit-2');
    const amps: number[] = [];
    for (let trial = 0; trial < 8; trial++) {
      bench.do({ kind: 'switch-jumper', on: true }).wait(0.5);
      amps.push(bench.world.inside().coilAmps);
      bench.do({ kind: 'switch-jumper', on: false }).wait(0.5);
    }
    expect(heard(bench, 'spark')).toBe(8);
    expect(amps.at(-1)).toBeLessThan((amps[0] as number) - 0.005);
  });

  test('parting the plug under current sparks; the driver switched off does not, it is clamped', () => {
    const bench = new WorldBench()
      .do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' })
      .wait(0.5)
      .do({ kind: 'command-solenoid', command: 'off' })
      .wait(0.5);
    expect(heard(bench, 'spark')).toBe(0);
    bench.do({ kind: 'command-solenoid', command: 'on' }).wait(0.5).do({ kind: 'part-plug' }).wait(0.5);
    expect(heard(bench, 'spark')).toBe(1);
  });
});
