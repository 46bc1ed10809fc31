import { describe, expect, test } from 'vitest';
import { MILLIAMP_SHUNT_OHMS } from '../../src/sim/devices/meter/meterSpecs.ts';
import type { MeterJack } from '../../src/sim/devices/places.ts';
import { WorldBench } from '../support/worldBench.ts';

const seen = (bench: WorldBench) => bench.world.observe().meter;

/** The unit's coil on the battery with the meter in series: battery, jumper, coil, red lead, meter, black lead, battery. */
function inSeries(jack: MeterJack): WorldBench {
  const bench = new WorldBench().do({ kind: 'part-plug' });
  if (jack !== 'volts') bench.do({ kind: 'meter-jack', jack });
  return bench
    .lead('jumper-supply', 'battery-positive')
    .lead('jumper-far', 'unit-1')
    .lead('meter-red', 'unit-2')
    .lead('meter-black', 'battery-negative');
}

/** Amps through the milliamps shunt, from the circuit itself. */
function shuntAmps(bench: WorldBench): number {
  const { circuit } = bench.world;
  const inside = circuit.nodeNames.indexOf('milliamps-inside');
  const common = circuit.nodeNames.indexOf('common-jack');
  return (circuit.voltage(inside) - circuit.voltage(common)) / MILLIAMP_SHUNT_OHMS;
}

describe('volts', () => {
  test('ghost volts: the parted feed shows 5.5 to 5.9 V at 10 MΩ and some 0.48 V at 3 kΩ', () => {
    const bench = new WorldBench()
      .do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' })
      .meter('volts-dc')
      .lead('meter-red', 'harness-1')
      .lead('meter-black', 'battery-negative');
    expect(bench.reading()).toBeGreaterThan(5.5);
    expect(bench.reading()).toBeLessThan(5.9);
    // 5.8 V · 3 kΩ / (33 kΩ + 3 kΩ), closed form.
    const loaded = bench.meter('volts-low-z').wait(1).reading() ?? 0;
    expect(Math.abs(loaded / 0.4833 - 1)).toBeLessThan(0.04);
  });

  test('low impedance does not change a battery, and pulls the sense wire down by its share', () => {
    const bench = new WorldBench().senseWatched().meter('volts-low-z');
    const sense = bench.wait(1).reading() ?? 0;
    // 9.10 V behind 2.2 kΩ into 3 kΩ and 110 kΩ side by side: 5.19 V; rail ±2 %, pull-up ±5 %.
    expect(sense).toBeGreaterThan(4.85);
    expect(sense).toBeLessThan(5.55);
    bench.lead('meter-red', 'battery-positive');
    expect(bench.reading()).toBeGreaterThan(12.4);
  });

  test('a lead in the wrong jack: volts read about nothing, ohms OL', () => {
    const bench = new WorldBench().do({ kind: 'meter-jack', jack: 'amps' }).meter('volts-dc');
    // On the sense wire, so that the shunt lets no more than milliamps through.
    bench.pin(3).lead('meter-red', 'cavity-3-back').lead('meter-black', 'battery-negative');
    bench.do({ kind: 'set-key', position: 'on' });
    expect(Math.abs(bench.reading() ?? 99)).toBeLessThan(0.001);
    bench.meter('ohms');
    expect(seen(bench.wait(3)).display.digits).toBe('OL');
  });

  test('AC volts on the pulsed feed: the part of each window of 0.25 s that is high decides, A·√(d (1 − d))', () => {
    const bench = new WorldBench()
      .pin(1)
      .meter('volts-ac')
      .lead('meter-red', 'cavity-1-back')
      .lead('meter-black', 'battery-negative')
      .do({ kind: 'set-key', position: 'on' }, { kind: 'meter-range', range: 2 });
    // Windows end every 0.25 s. A pulse of 0.25 s begun 0.1 s into one is high for 0.15 s of it and 0.10 s of the next.
    bench.world.advanceTo(Math.ceil(bench.world.tick / 5000) * 5000 + 2000);
    bench.do({ kind: 'command-solenoid', command: 'pulse' }).wait(3);
    const pair = [seen(bench).display.value ?? 0, seen(bench.wait(0.25)).display.value ?? 0];
    const high = 12.66 - 0.39 * 0.32;
    const rising = high * Math.sqrt(0.4 * 0.6);
    expect(Math.abs(Math.min(...pair) / rising - 1)).toBeLessThan(0.02);
    // The window in which the feed falls has the coil's kick in it: some 27 V below ground for a millisecond or two.
    expect(Math.max(...pair) / rising).toBeGreaterThan(1.03);
    expect(Math.max(...pair) / rising).toBeLessThan(1.15);
    // Outside the specified 40 Hz to 1 kHz; on the steady feed there is nothing alternating to read.
    bench.do({ kind: 'command-solenoid', command: 'on' }).wait(2);
    expect(seen(bench).display.value).toBeLessThan(0.02);
  });

  test('low and high of the pulsed feed: about nothing and battery volts, on a held range', () => {
    const bench = new WorldBench()
      .pin(1)
      .meter('volts-dc')
      .lead('meter-red', 'cavity-1-back')
      .lead('meter-black', 'battery-negative')
      .do({ kind: 'set-key', position: 'on' }, { kind: 'meter-range', range: 2 });
    bench.world.advanceTo(Math.ceil(bench.world.tick / 5000) * 5000);
    bench
      .do({ kind: 'meter-extremes', show: 'live' }, { kind: 'command-solenoid', command: 'pulse' })
      .wait(5);
    bench.do({ kind: 'meter-extremes', show: 'high' });
    expect(seen(bench).display.value).toBeGreaterThan(12.2);
    bench.do({ kind: 'meter-extremes', show: 'low' });
    expect(Math.abs(seen(bench).display.value ?? 99)).toBeLessThan(0.5);
  });

  test('and with autorange the same feed makes the meter hunt', () => {
    const bench = new WorldBench()
      .pin(1)
      .meter('volts-dc')
      .lead('meter-red', 'cavity-1-back')
      .lead('meter-black', 'battery-negative')
      .do({ kind: 'set-key', position: 'on' });
    bench.world.advanceTo(Math.ceil(bench.world.tick / 5000) * 5000);
    bench.do({ kind: 'command-solenoid', command: 'pulse' });
    let dashes = 0;
    for (let i = 0; i < 20; i++) if (seen(bench.wait(0.25)).display.digits === '----') dashes += 1;
    expect(dashes).toBeGreaterThan(8);
    expect(seen(bench).display.settled).toBe(false);
  });
});

describe('amps', () => {
  test('in series with the coil on the amps jack: some 0.39 A, by Ohm with the coil of this unit', () => {
    const bench = inSeries('amps').meter('amps-dc').do({ kind: 'switch-jumper', on: true });
    const amps = bench.wait(1).reading() ?? 0;
    expect(amps).toBeGreaterThan(12.66 / (32 * 1.07 + 0.5));
    expect(amps).toBeLessThan(12.66 / (32 * 0.93));
    // The coil's current and that of its core loss, 2.2 kΩ beside it, within ±(1.5 % + 3 counts of 0.001 A).
    const truth = bench.world.inside().coilAmps + 12.5 / 2200;
    expect(Math.abs(amps - truth)).toBeLessThanOrEqual(0.015 * truth + 0.003);
    expect(seen(bench).display.unit).toBe('A');
  });

  test('on the milliamps jack the same current, less what the 1 Ω shunt and its fuse take', () => {
    const bench = inSeries('milliamps').meter('milliamps-dc').do({ kind: 'switch-jumper', on: true });
    const amps = bench.wait(1).reading() ?? 0;
    const { coilAmps } = bench.world.inside();
    const truth = coilAmps + 12 / 2200;
    expect(Math.abs(amps - truth)).toBeLessThanOrEqual(0.01 * truth + 0.0003);
    expect(seen(bench).display.unit).toBe('mA');
    const free = inSeries('amps').meter('amps-dc').do({ kind: 'switch-jumper', on: true }).wait(2);
    expect(coilAmps).toBeLessThan(free.world.inside().coilAmps * 0.98);
  });

  test('reversed leads read below zero', () => {
    const bench = inSeries('amps').meter('amps-dc');
    bench
      .do({ kind: 'lift-lead', end: 'meter-red' }, { kind: 'lift-lead', end: 'meter-black' })
      .lead('meter-black', 'unit-2')
      .lead('meter-red', 'battery-negative')
      .do({ kind: 'switch-jumper', on: true });
    expect(bench.wait(1).reading()).toBeLessThan(-0.35);
  });

  test('the lead in the volts jack: amps and milliamps read 0.00', () => {
    const bench = inSeries('volts').do({ kind: 'switch-jumper', on: true });
    for (const of of ['amps-dc', 'milliamps-dc'] as const) {
      const shown = seen(bench.meter(of).wait(2)).display;
      expect(Number(shown.digits)).toBeCloseTo(0, 1);
      expect(shown.digits).not.toBe('OL');
    }
    expect(bench.world.inside().coilAmps).toBeLessThan(1e-3);
  });

  test('straight across the battery the 600 mA fuse goes; milliamps read nothing from then on, until it is renewed', () => {
    const bench = new WorldBench().do({ kind: 'meter-jack', jack: 'milliamps' }).meter('milliamps-dc');
    bench.lead('meter-black', 'battery-negative').lead('meter-red', 'battery-positive').wait(2);
    expect(Math.abs(seen(bench).display.value ?? 99)).toBeLessThan(1e-4);
    bench.do({ kind: 'lift-lead', end: 'meter-red' }, { kind: 'lift-lead', end: 'meter-black' });
    const coil = (): number => {
      bench.do({ kind: 'switch-jumper', on: true }).wait(2);
      const amps = seen(bench).display.value ?? 0;
      bench.do({ kind: 'switch-jumper', on: false });
      return amps;
    };
    bench
      .do({ kind: 'part-plug' })
      .lead('jumper-supply', 'battery-positive')
      .lead('jumper-far', 'unit-1')
      .lead('meter-red', 'unit-2')
      .lead('meter-black', 'battery-negative');
    expect(Math.abs(coil())).toBeLessThan(1e-4);
    bench.do({ kind: 'renew', item: 'meter-fuses' });
    expect(coil()).toBeGreaterThan(0.35);
  });

  test("the coil's current never melts the 600 mA fuse; a lamp's beside it adds up to its limit", () => {
    const bench = inSeries('milliamps').meter('milliamps-dc').do({ kind: 'switch-jumper', on: true });
    const coil = bench.wait(600).reading() ?? 0;
    expect(coil).toBeGreaterThan(0.35);
    bench.lead('lamp-tip', 'battery-positive').lead('lamp-clip', 'meter-red-tip').wait(2);
    const { digits, value } = seen(bench).display;
    // 0.38 A and 0.25 A: at or just over the last of the 600 counts.
    expect(digits === 'OL' || (value ?? 0) > 0.57).toBe(true);
    expect(coil).toBeLessThan(0.42);
  });

  test("the bench supply's 3 A melt it in a moment, not at once", () => {
    const bench = new WorldBench().do({ kind: 'meter-jack', jack: 'milliamps' }).meter('milliamps-dc');
    bench.lead('meter-red', 'supply-positive').lead('meter-black', 'supply-negative');
    bench.do({ kind: 'switch-supply', on: true }).wait(0.002);
    expect(shuntAmps(bench)).toBeGreaterThan(2.5);
    bench.wait(2);
    expect(Math.abs(shuntAmps(bench))).toBeLessThan(1e-6);
    expect(Math.abs(seen(bench).display.value ?? 99)).toBeLessThan(1e-4);
  });
});

describe('ohms, continuity, diode', () => {
  test('continuity: tone and number on the ground wire, none on the coil, which shows its 32 Ω', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }).meter('continuity');
    bench.lead('meter-red', 'harness-2').lead('meter-black', 'chassis-stud').wait(1);
    expect(seen(bench).tone).toBe(true);
    expect(seen(bench).display.value).toBeLessThan(1);
    bench.lead('meter-red', 'unit-1').lead('meter-black', 'unit-2').wait(1);
    expect(seen(bench).tone).toBe(false);
    expect(seen(bench).display.value).toBeGreaterThan(29);
    expect(bench.world.observe().happenings.filter((one) => one.kind === 'tone').length).toBe(1);
  });

  test('the tone is quicker than the digits, and a touch too short to read is still heard', () => {
    const bench = new WorldBench().meter('continuity').lead('meter-black', 'battery-negative').wait(1);
    bench.lead('meter-red', 'chassis-stud').wait(0.005);
    expect(seen(bench).tone).toBe(true);
    expect(seen(bench).display.digits).toBe('OL');
    bench.do({ kind: 'lift-lead', end: 'meter-red' }).wait(0.05);
    expect(seen(bench).tone).toBe(true);
    bench.wait(0.1);
    expect(seen(bench).tone).toBe(false);
  });

  test('diode on the LED tester: it lights and reads over 2 V; on nothing: over range and dark', () => {
    const bench = new WorldBench().meter('diode').lead('meter-black', 'battery-negative');
    bench.lead('led-clip', 'battery-negative').lead('led-tip', 'meter-red-tip').wait(2);
    expect(seen(bench).display.digits).toBe('OL');
    // (3 V − 1.9 V) / (2.4 kΩ + 1 kΩ) = 0.32 mA, so 2.22 V at the jacks: the tester is not a bare diode.
    const jack = bench.world.circuit;
    const across =
      jack.voltage(jack.nodeNames.indexOf('volts-jack')) -
      jack.voltage(jack.nodeNames.indexOf('common-jack'));
    expect(Math.abs(across - 2.22)).toBeLessThan(0.05);
    bench.do({ kind: 'lift-lead', end: 'led-tip' }).wait(2);
    expect(seen(bench).display.digits).toBe('OL');
    expect(jack.voltage(jack.nodeNames.indexOf('volts-jack'))).toBeCloseTo(3, 2);
  });

  test('diode over the coil reads its milliamp times 32 Ω: a few hundredths of a volt', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }).meter('diode');
    bench.lead('meter-red', 'unit-1').lead('meter-black', 'unit-2');
    const volts = bench.reading() ?? 0;
    expect(volts).toBeGreaterThan((3 / (2400 + 34)) * 29);
    expect(volts).toBeLessThan((3 / (2400 + 30)) * 35);
  });

  test('ohms of the ground path while the solenoid runs: a false number, and below zero with the leads the other way', () => {
    const live = new WorldBench().pin(2).meter('ohms');
    live.do({ kind: 'set-key', position: 'on' }).lead('meter-red', 'cavity-2-back');
    live.lead('meter-black', 'battery-negative');
    const truth = live.reading() ?? 0;
    expect(truth).toBeLessThan(0.6);
    live.do({ kind: 'command-solenoid', command: 'on' });
    // About 25 mV where 1 mA of the meter makes 1 mV an ohm.
    expect(live.reading()).toBeGreaterThan(15);
    live.do({ kind: 'lift-lead', end: 'meter-red' }, { kind: 'lift-lead', end: 'meter-black' });
    live.lead('meter-red', 'battery-negative').lead('meter-black', 'cavity-2-back');
    expect(live.reading()).toBeLessThan(-15);
  });

  test('ohms on the battery: OL, and the meter survives it', () => {
    const bench = new WorldBench().meter('ohms').lead('meter-red', 'battery-positive');
    expect(seen(bench.lead('meter-black', 'battery-negative').wait(3)).display.digits).toBe('OL');
    expect(bench.meter('volts-dc').reading()).toBeGreaterThan(12.4);
  });
});
