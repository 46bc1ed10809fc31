import { describe, expect, test } from 'vitest';
import type { LeadPoint } from '../../../src/sim/devices/places.ts';
import { WorldBench } from '../../support/worldBench.ts';

/** Fused 12 V from the jumper onto the sense line, with the vacuum switch as the bench left it. */
function twelveVoltsOnSense(bench: WorldBench): WorldBench {
  return bench
    .lead('jumper-supply', 'battery-positive')
    .lead('jumper-far', 'cavity-3-back')
    .do({ kind: 'switch-jumper', on: true });
}

function acquired(bench: WorldBench): string[] {
  return bench.world.snapshot().state.bench.acquired.map(({ fault }) => fault);
}

function cycle(bench: WorldBench): 'open' | 'closed' {
  return bench.release().world.inside().vacuumSwitch;
}

describe('12 V on the sense line', () => {
  test('with the vacuum switch closed: many amps, the jumper fuse goes and the contact is welded', () => {
    const bench = twelveVoltsOnSense(new WorldBench().pumpOn().senseWatched().stroke()).wait(1);
    expect(bench.world.observe().jumper.fuse).toBe('melted');
    expect(acquired(bench)).toEqual(['switch-stuck-closed']);
    expect(cycle(bench)).toBe('closed');
    // A new unit is the cure.
    bench.do({ kind: 'renew', item: 'unit' }).wait(1);
    expect(bench.world.inside().vacuumSwitch).toBe('open');
  });

  test('with it open: no harm; but the switch then trips under 12 V and welds as it makes', () => {
    const bench = twelveVoltsOnSense(new WorldBench().pumpOn().senseWatched()).wait(1);
    expect(bench.world.observe().jumper.fuse).toBe('whole');
    expect(acquired(bench)).toEqual([]);
    bench.stroke().wait(1);
    expect(bench.world.observe().jumper.fuse).toBe('melted');
    expect(acquired(bench)).toEqual(['switch-stuck-closed']);
  });

  test('the few milliamps of the pull-up never weld it', () => {
    const bench = new WorldBench().pumpOn().senseWatched();
    for (let trip = 0; trip < 10; trip++) bench.stroke().release();
    expect(acquired(bench)).toEqual([]);
  });
});

describe('sense input', () => {
  test('bears the battery, but not the bench supply stacked on it: 24.7 V', () => {
    const bench = new WorldBench().senseWatched();
    bench.lead('jumper-supply', 'battery-positive').lead('jumper-far', 'controller-sense');
    bench.do({ kind: 'switch-jumper', on: true }).wait(1);
    expect(acquired(bench)).toEqual([]);
    const before = bench.do({ kind: 'switch-jumper', on: false }).wait(1).reading() ?? 0;
    bench.lead('plain-a', 'battery-positive').lead('plain-b', 'supply-negative');
    bench.lead('jumper-supply', 'supply-positive').do({ kind: 'switch-supply', on: true });
    bench.do({ kind: 'switch-jumper', on: true }).wait(1);
    expect(acquired(bench)).toEqual(['sense-input-damaged']);
    const after = bench.do({ kind: 'switch-jumper', on: false }).reading() ?? 0;
    expect(before).toBeGreaterThan(8.4);
    expect(after).toBeLessThan(2);
    bench.do({ kind: 'renew', item: 'controller' });
    expect(bench.reading()).toBeGreaterThan(8.4);
  });
});

/** Ohms through terminal 3 of the mated plug, as volts a milliampere of sense current would not show: by its parts. */
function terminalOhms(bench: WorldBench): number {
  const { circuit } = bench.world;
  const [h, u] = [circuit.nodeNames.indexOf('h3'), circuit.nodeNames.indexOf('u3')];
  const terminal = circuit.parts.find((part) => part.a === h && part.b === u);
  return (circuit.voltage(h) - circuit.voltage(u)) / (terminal?.amps ?? 0);
}

describe('terminals and insulation', () => {
  test('a bare tip pushed into a terminal spreads it, further each time; the matched pin does not; a new plug cures it', () => {
    const bench = new WorldBench().pumpOn().do({ kind: 'set-key', position: 'on' }).stroke();
    expect(terminalOhms(bench.wait(1))).toBeCloseTo(0.004, 3);
    const probed = (point: LeadPoint): number => {
      bench.do({ kind: 'part-plug' }).lead('meter-red', point).do({ kind: 'lift-lead', end: 'meter-red' });
      return terminalOhms(bench.do({ kind: 'mate-plug' }).wait(1));
    };
    expect(probed('harness-3')).toBeCloseTo(0.004, 3);
    const first = probed('front-3');
    expect(first).toBeGreaterThan(0.3);
    const second = probed('front-3');
    expect(second).toBeGreaterThan(first * 1.3);
    expect(acquired(bench)).toEqual(['terminal-3-spread']);
    bench.do({ kind: 'renew', item: 'plug' }, { kind: 'mate-plug' }).wait(1);
    expect(terminalOhms(bench)).toBeCloseTo(0.004, 3);
  });

  test('a wire pierced for a reading leaks to chassis from then on', () => {
    const bench = new WorldBench().meter('volts-dc').lead('meter-black', 'battery-negative');
    bench.lead('meter-red', 'wire-3').do({ kind: 'set-key', position: 'on' });
    expect(acquired(bench)).toEqual(['wire-3-pierced']);
    // 50 kΩ beside the pull-up: 8.92 V behind 2.157 kΩ falls to 8.55 V.
    expect(Math.abs((bench.reading() ?? 0) - 8.55)).toBeLessThan(0.2);
    const leak = (): number => 8.92 - bench.world.inside().senseVolts;
    const once = leak();
    for (let more = 0; more < 5; more++) {
      bench.do({ kind: 'lift-lead', end: 'meter-red' }).lead('meter-red', 'wire-3');
    }
    bench.wait(1);
    expect(leak()).toBeGreaterThan(once + 1);
  });

  test('damage done under the hands disturbs nothing else: the coil keeps its current', () => {
    const bench = new WorldBench()
      .do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' })
      .wait(1);
    const before = bench.world.inside();
    bench.lead('meter-red', 'wire-3');
    expect(bench.world.inside().coilAmps).toBe(before.coilAmps);
    expect(bench.wait(0.0005).world.inside().coilAmps).toBeCloseTo(before.coilAmps, 6);
    expect(bench.world.inside().plunger).toBe('seated');
    expect(bench.clicks()).toBe(1);
  });
});
