import { describe, expect, test } from 'vitest';
import { Capacitor } from '../../src/sim/components/Capacitor.ts';
import { Clamp } from '../../src/sim/components/Clamp.ts';
import { Contact } from '../../src/sim/components/Contact.ts';
import { CurrentLimiter } from '../../src/sim/components/CurrentLimiter.ts';
import { Fuse } from '../../src/sim/components/Fuse.ts';
import { Inductor } from '../../src/sim/components/Inductor.ts';
import { MeterInput, VOLTMETER } from '../../src/sim/components/MeterInput.ts';
import { ProbeContact } from '../../src/sim/components/ProbeContact.ts';
import { Resistor } from '../../src/sim/components/Resistor.ts';
import { VoltageSource } from '../../src/sim/components/VoltageSource.ts';
import { Wire } from '../../src/sim/components/Wire.ts';
import { Circuit } from '../../src/sim/network/Circuit.ts';
import type { Part } from '../../src/sim/network/Part.ts';
import { StateReader } from '../../src/sim/network/StateReader.ts';

/** A part across a source: the usual jig. Terminal a is on the source, b on the reference. */
function jig<P extends Part>(volts: number, ohms: number, make: (node: number) => P) {
  const circuit = new Circuit();
  const node = circuit.node('node');
  const source = circuit.add(new VoltageSource(node, 0, volts, ohms));
  const part = circuit.add(make(node));
  circuit.compile();
  circuit.solveDc();
  return { circuit, part, source, volts: () => circuit.voltage(node) };
}

describe('conductors', () => {
  test('a resistor follows its new value at the next step, and its current flows into terminal a', () => {
    const { circuit, part } = jig(12, 1, (n) => new Resistor(n, 0, 5));
    expect(part.amps).toBeCloseTo(2, 9);
    part.ohms = 11;
    circuit.step(1e-4);
    expect(part.amps).toBeCloseTo(1, 9);
    expect(() => {
      part.ohms = 0;
    }).toThrow('resistance must be above zero');
  });

  test('an open contact leaks 1 GΩ, a closed one carries', () => {
    const { circuit, part } = jig(12, 1, (n) => new Contact(n, 0, 0.08));
    expect(part.amps).toBeCloseTo(12e-9, 13);
    part.closed = true;
    circuit.step(1e-4);
    expect(part.amps).toBeCloseTo(12 / 1.08, 9);
  });

  test('a probe reads nothing in the air, and another point as soon as it is moved', () => {
    const circuit = new Circuit();
    const [low, high, tip] = [circuit.node('low'), circuit.node('high'), circuit.node('tip')];
    circuit.add(new VoltageSource(low, 0, 5));
    circuit.add(new VoltageSource(high, 0, 12));
    const probe = circuit.add(new ProbeContact(tip));
    const meter = circuit.add(new MeterInput(tip, 0));
    circuit.compile();
    for (const [node, volts] of [
      [null, 0],
      [low, 5],
      [high, 12],
      [0, 0],
      [high, 12],
      [null, 0],
    ] as const) {
      probe.attach(node);
      expect(circuit.step(1e-4).converged).toBe(true);
      expect(meter.volts).toBeCloseTo(volts, 6);
      expect(probe.amps).toBeCloseTo(-volts / 1e7, 10);
    }
  });

  test('a broken wire carries nothing to speak of; a corroded one adds what it adds', () => {
    const { circuit, part } = jig(12, 31.86, (n) => new Wire(n, 0, 3.5, 0.5, 0.01015));
    expect(part.amps).toBeCloseTo(12 / 32, 6);
    part.addedOhms = 40;
    circuit.step(1e-4);
    expect(part.amps).toBeCloseTo(12 / 72, 6);
    part.addedOhms = 1e9;
    circuit.step(1e-4);
    expect(part.amps).toBeLessThan(2e-8);
    expect(part.conducts).toBe(false);
  });
});

describe('Fuse', () => {
  test('one long step and many short ones warm it alike in the end', () => {
    const long = jig(9, 1, (n) => new Fuse(n, 0, 0.0077, 10));
    const short = jig(9, 1, (n) => new Fuse(n, 0, 0.0077, 10));
    for (const { circuit, part } of [long, short]) {
      part.melted = false;
      circuit.step(1e-4);
    }
    for (let i = 0; i < 40; i++) long.circuit.step(1);
    for (let i = 0; i < 40_000; i++) short.circuit.step(1e-3);
    const last = (c: Circuit) => c.state().at(-1) as number;
    expect(last(long.circuit)).toBeCloseTo(last(short.circuit), 6);
  });

  test('tells how long it will bear the present current', () => {
    // 9.0 V behind 0.9923 Ω and 7.7 mΩ: 9 A through a 3 A fuse, 300 %; closed form 1.5 s × ln(9 / 7.5).
    const { circuit, part } = jig(0, 0.9923, (n) => new Fuse(n, 0, 0.0077, 3));
    (circuit.parts[0] as VoltageSource).volts = 9;
    circuit.step(1e-6);
    const foreseen = part.secondsToMelt;
    expect(foreseen).toBeCloseTo(1.5 * Math.log(9 / 7.5), 4);
    let seconds = 0;
    while (!part.melted) {
      circuit.step(1e-4);
      seconds += 1e-4;
    }
    expect(Math.abs(seconds - foreseen)).toBeLessThan(1e-3);
    circuit.step(1e-4);
    expect(part.amps).toBeLessThan(1e-8);
  });

  test('a settled overload melts it in the operating point too', () => {
    const { part } = jig(12, 0.5, (n) => new Fuse(n, 0, 0.0077, 10));
    expect(part.melted).toBe(true);
    expect(part.amps).toBeLessThan(2e-8);
  });
});

describe('parts with a state', () => {
  test('a capacitor of 1 µF behind 1 kΩ reaches 63.2 % in 1 ms (closed form, 0.5 %)', () => {
    const { circuit, part, source } = jig(0, 1000, (n) => new Capacitor(n, 0, 1e-6));
    source.volts = 10;
    for (let i = 0; i < 1000; i++) circuit.step(1e-6);
    expect(Math.abs(part.volts / (10 * (1 - Math.exp(-1))) - 1)).toBeLessThan(0.005);
    circuit.solveDc();
    expect(part.volts).toBeCloseTo(10, 6);
    expect(part.amps).toBe(0);
  });

  test('a coil settles at its resistance; without resistance it is a short', () => {
    expect(jig(12, 0, (n) => new Inductor(n, 0, 0.07, 32)).part.amps).toBeCloseTo(0.375, 12);
    expect(jig(12, 4, (n) => new Inductor(n, 0, 0.07)).part.amps).toBeCloseTo(3, 9);
  });
});

describe('bent characteristics', () => {
  test('a one-sided clamp holds one way only, a two-sided one both ways', () => {
    const held = (volts: number, sides: 'one-sided' | 'two-sided') =>
      jig(volts, 100, (n) => new Clamp(n, 0, 40, 1, sides)).volts();
    expect(held(141, 'one-sided')).toBeCloseTo(41, 6);
    expect(held(-141, 'one-sided')).toBeCloseTo(-141, 6);
    expect(held(-141, 'two-sided')).toBeCloseTo(-41, 6);
    expect(held(39.9, 'two-sided')).toBeCloseTo(39.9, 6);
  });

  test('a limiter is a resistor below its limit and holds it above, both ways', () => {
    const amps = (volts: number) => jig(volts, 1, (n) => new CurrentLimiter(n, 0, 0.25, 3)).part.amps;
    expect(amps(1.25)).toBeCloseTo(1, 9);
    expect(amps(12)).toBeGreaterThan(3);
    expect(amps(12)).toBeLessThan(3.002);
    expect(amps(-12)).toBeCloseTo(-amps(12), 9);
  });
});

describe('MeterInput', () => {
  test('as an ohmmeter it finds the resistance between its jacks from its own source', () => {
    const circuit = new Circuit();
    const [red, black] = [circuit.node('red'), circuit.node('black')];
    const meter = circuit.add(new MeterInput(red, black, { kind: 'test', volts: 2.5, ohms: 1000 }));
    const unknown = circuit.add(new Resistor(red, black, 32.2));
    circuit.compile();
    for (const ohms of [0.1, 32.2, 4700, 1e6]) {
      unknown.ohms = ohms;
      circuit.step(1e-4);
      expect(meter.volts / meter.testAmps / ohms).toBeCloseTo(1, 4);
    }
    meter.mode = { kind: 'open' };
    circuit.step(1e-4);
    expect(meter.volts).toBeCloseTo(0, 9);
    meter.mode = VOLTMETER;
    expect(meter.conducts).toBe(true);
  });
});

describe('saved parts', () => {
  const makers: Record<string, (n: number) => Part> = {
    Resistor: (n) => new Resistor(n, 0, 5),
    Contact: (n) => new Contact(n, 0, 0.1, true),
    ProbeContact: (n) => new ProbeContact(n),
    Wire: (n) => new Wire(n, 0, 1, 0.5),
    Fuse: (n) => new Fuse(n, 0, 0.0077, 10),
    Inductor: (n) => new Inductor(n, 0, 0.07, 32),
    Capacitor: (n) => new Capacitor(n, 0, 1e-6),
    VoltageSource: (n) => new VoltageSource(n, 0, 3, 50),
    MeterInput: (n) => new MeterInput(n, 0),
    Clamp: (n) => new Clamp(n, 0, 5, 1, 'two-sided'),
    CurrentLimiter: (n) => new CurrentLimiter(n, 0, 0.25, 3),
  };
  /** Everything about a part that a hand or a fault may change. */
  const disturb = (part: Part): void => {
    if (part instanceof Resistor) part.ohms = 7;
    if (part instanceof Contact) part.closed = false;
    if (part instanceof ProbeContact) part.attach(0);
    if (part instanceof Wire) [part.celsius, part.addedOhms] = [60, 3];
    if (part instanceof Fuse) part.melted = true;
    if (part instanceof Inductor) [part.henries, part.ohms] = [0.11, 30];
    if (part instanceof VoltageSource) [part.volts, part.ohms] = [4, 60];
    if (part instanceof MeterInput) part.mode = { kind: 'test', volts: 2.5, ohms: 1000 };
    if (part instanceof Clamp) part.volts = 6;
  };

  test.each(Object.keys(makers))(
    '%s comes back whole: same numbers saved, same netlist, same next step',
    (kind) => {
      const make = makers[kind] as (n: number) => Part;
      const first = jig(12, 2, make);
      disturb(first.part);
      first.circuit.step(1e-4);
      const saved: number[] = [];
      first.part.save(saved);
      const second = jig(12, 2, make);
      const reader = new StateReader(saved);
      second.part.load(reader);
      reader.finish();
      second.circuit.restore(first.circuit.state());
      expect(second.circuit.exportNetlist()).toEqual(first.circuit.exportNetlist());
      expect(second.part.conducts).toBe(first.part.conducts);
      // The piece of a bent part is part of its state: found again, it needs no second solve.
      const solves = [first, second].map(({ circuit }) => circuit.step(3e-4).iterations);
      expect(solves).toEqual([2, 2]);
      expect(second.circuit.state()).toEqual(first.circuit.state());
    },
  );
});
