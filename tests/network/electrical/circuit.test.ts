import { describe, expect, test } from 'vitest';
import { Capacitor } from '../../../src/sim/components/Capacitor.ts';
import { Clamp } from '../../../src/sim/components/Clamp.ts';
import { Contact } from '../../../src/sim/components/Contact.ts';
import { CurrentLimiter } from '../../../src/sim/components/CurrentLimiter.ts';
import { Fuse } from '../../../src/sim/components/Fuse.ts';
import { Inductor } from '../../../src/sim/components/Inductor.ts';
import { MeterInput } from '../../../src/sim/components/MeterInput.ts';
import { ProbeContact } from '../../../src/sim/components/ProbeContact.ts';
import { Resistor } from '../../../src/sim/components/Resistor.ts';
import { VoltageSource } from '../../../src/sim/components/VoltageSource.ts';
import { Wire } from '../../../src/sim/components/Wire.ts';
import { Circuit } from '../../../src/sim/network/Circuit.ts';
import { floatingIslands } from '../../../src/sim/network/topology.ts';

/** A battery, fuse, driver contact, wire, coil with core loss and clamp, ground wire, and a meter with two leads. */
function coilCircuit() {
  const c = new Circuit();
  const [plus, fused, feed, unit, ground, red, black] = [
    'plus',
    'fused',
    'feed',
    'unit',
    'ground',
    'red',
    'black',
  ].map((name) => c.node(name)) as [number, number, number, number, number, number, number];
  const parts = {
    battery: c.add(new VoltageSource(plus, 0, 12.66, 0.008)),
    fuse: c.add(new Fuse(plus, fused, 0.0077, 10)),
    driver: c.add(new Contact(fused, feed, 0.25, true)),
    limiter: null as CurrentLimiter | null,
    wire: c.add(new Wire(feed, unit, 3.5, 0.5)),
    coil: c.add(new Inductor(unit, ground, 0.07, 32)),
    core: c.add(new Resistor(unit, ground, 2200)),
    stray: c.add(new Capacitor(unit, ground, 1e-9)),
    clamp: c.add(new Clamp(0, feed, 40, 0.5)),
    arc: c.add(new Clamp(fused, feed, 300, 20, 'two-sided')),
    groundWire: c.add(new Wire(ground, 0, 1.5, 0.5)),
    red: c.add(new ProbeContact(red)),
    black: c.add(new ProbeContact(black)),
    meter: c.add(new MeterInput(red, black)),
  };
  c.compile();
  return { c, ...parts, nodes: { plus, fused, feed, unit, ground, red, black } };
}

describe('Circuit', () => {
  test('a loaded solenoid circuit balances at every node and reads what Ohm says', () => {
    const { c, coil, nodes, red, black, meter } = coilCircuit();
    red.attach(nodes.unit);
    black.attach(nodes.ground);
    expect(c.solveDc()).toEqual({ converged: true, iterations: 1 });
    // Loop: 8 mΩ + 7.7 mΩ + 250 mΩ + (3.5 × 37.1 + 8) mΩ + coil ∥ 2.2 kΩ ∥ 10 MΩ + (1.5 × 37.1 + 8) mΩ.
    const load = 1 / (1 / 32 + 1 / 2200 + 1 / 1e7);
    const total = 0.008 + 0.0077 + 0.25 + 0.13785 + load + 0.06365;
    const volts = (12.66 * load) / total;
    expect(meter.volts).toBeCloseTo(volts, 6);
    expect(coil.amps).toBeCloseTo(volts / 32, 8);
    expect(c.kclResidual()).toBeLessThan(1e-9);
  });

  test('an opening coil is caught by the clamp: the feed goes to −40 V and a little more, and the current dies', () => {
    const { c, coil, driver, nodes, clamp } = coilCircuit();
    c.solveDc();
    driver.closed = false;
    let lowest = 0;
    for (let i = 0; i < 400; i++) {
      expect(c.step(5e-5).converged).toBe(true);
      lowest = Math.min(lowest, c.voltage(nodes.feed));
      expect(c.kclResidual()).toBeLessThan(1e-7);
    }
    expect(lowest).toBeLessThan(-40);
    expect(lowest).toBeGreaterThan(-41);
    expect(Math.abs(coil.amps)).toBeLessThan(1e-3);
    expect(clamp.conducts).toBe(false);
  });

  test('without the clamp the contact sparks over at 300 V', () => {
    const { c, driver, clamp, nodes } = coilCircuit();
    clamp.volts = 1e6;
    c.solveDc();
    driver.closed = false;
    c.step(5e-5);
    const across = c.voltage(nodes.fused) - c.voltage(nodes.feed);
    expect(across).toBeGreaterThan(300);
    expect(across).toBeLessThan(310);
  });

  test('energy given out by the battery equals heat plus field, the better the finer: four times for half the step', () => {
    const imbalance = (h: number): number => {
      const c = new Circuit();
      const [plus] = [c.node('plus')] as [number];
      c.add(new VoltageSource(plus, 0, 12));
      const coil = c.add(new Inductor(plus, 0, 0.1, 30));
      c.compile();
      let given = 0;
      let heat = 0;
      let before = 0;
      for (let i = Math.round(0.02 / h); i > 0; i--) {
        c.step(h);
        // Current taken as straight between the ends of a step.
        given += (12 * h * (before + coil.amps)) / 2;
        heat += (30 * h * (before * before + before * coil.amps + coil.amps * coil.amps)) / 3;
        before = coil.amps;
      }
      return Math.abs(heat + coil.joules - given) / given;
    };
    const [coarse, fine] = [imbalance(2e-4), imbalance(1e-4)];
    expect(coarse).toBeLessThan(2e-4);
    expect(coarse / fine).toBeGreaterThan(3.5);
    expect(coarse / fine).toBeLessThan(4.5);
  });

  test('changing an inductance keeps the flux and never raises energy when the plunger moves in', () => {
    const { c, coil } = coilCircuit();
    c.solveDc();
    const flux = coil.fluxLinkage;
    const joules = coil.joules;
    coil.henries = 0.11;
    expect(coil.fluxLinkage).toBe(flux);
    expect(coil.joules).toBeLessThan(joules);
    c.step(1e-9);
    expect(coil.amps).toBeCloseTo(flux / 0.11, 5);
  });

  test('a saved state goes on with the same last bit, through switching and moving probes', () => {
    const run = (breakAt: number) => {
      let s = coilCircuit();
      s.c.solveDc();
      const seen: number[] = [];
      for (let i = 0; i < 120; i++) {
        if (i === breakAt) {
          const saved = s.c.state();
          s = coilCircuit();
          s.c.restore(JSON.parse(JSON.stringify(saved)) as number[]);
        }
        if (i === 10) s.driver.closed = false;
        if (i === 20) s.red.attach(s.nodes.unit);
        if (i === 30) s.meter.mode = { kind: 'test', volts: 2.5, ohms: 1000 };
        if (i === 40) s.black.attach(s.nodes.ground);
        if (i === 60) s.driver.closed = true;
        if (i === 80) s.coil.henries = 0.11;
        if (i === 90) s.fuse.melted = true;
        s.c.step(i % 3 === 0 ? 5e-5 : 1e-4);
        seen.push(s.c.voltage(s.nodes.unit), s.meter.volts, s.coil.amps, s.c.kclResidual());
      }
      return [...seen, ...s.c.state()];
    };
    const straight = run(-1);
    for (const at of [1, 11, 12, 25, 35, 45, 61, 85, 95]) expect(run(at)).toEqual(straight);
  });

  test('floating nodes do not stop the solve, and the topology check names them', () => {
    const { c, nodes, driver, red } = coilCircuit();
    expect(floatingIslands(c)).toEqual([['red', 'black']]);
    expect(c.solveDc().converged).toBe(true);
    expect(Math.abs(c.voltage(nodes.red))).toBe(0);
    red.attach(nodes.plus);
    expect(floatingIslands(c)).toEqual([]);
    driver.closed = false;
    expect(floatingIslands(c)).toEqual([]);
  });

  test('the leak at every node moves a 10 MΩ meter by less than 1e-5 even behind 10 MΩ', () => {
    const c = new Circuit();
    const [plus, red] = [c.node('plus'), c.node('red')];
    c.add(new VoltageSource(plus, 0, 12));
    c.add(new Resistor(plus, red, 1e7));
    const meter = c.add(new MeterInput(red, 0));
    c.compile();
    c.solveDc();
    expect(Math.abs(meter.volts - 6) / 6).toBeLessThan(1e-5);
  });

  test('contradicting ideal sources are reported, and the last good state stands', () => {
    const c = new Circuit();
    const plus = c.node('plus');
    const first = c.add(new VoltageSource(plus, 0, 12, 0.1));
    const second = c.add(new VoltageSource(plus, 0, 13, 0.1));
    c.compile();
    expect(c.solveDc().converged).toBe(true);
    const before = c.voltage(plus);
    first.ohms = 0;
    second.ohms = 0;
    expect(c.step(1e-4).converged).toBe(false);
    expect(c.voltage(plus)).toBe(before);
    expect(before).toBeCloseTo(12.5, 6);
  });

  test('a current limiter holds a dead short at its limit', () => {
    const c = new Circuit();
    const [plus, out] = [c.node('plus'), c.node('out')];
    c.add(new VoltageSource(plus, 0, 12.6, 0.02));
    const limiter = c.add(new CurrentLimiter(plus, out, 0.25, 3));
    const load = c.add(new Resistor(out, 0, 32));
    c.compile();
    c.solveDc();
    expect(limiter.limiting).toBe(false);
    expect(limiter.amps).toBeCloseTo(12.6 / 32.27, 6);
    load.ohms = 0.01;
    expect(c.step(1e-4).converged).toBe(true);
    expect(limiter.limiting).toBe(true);
    expect(limiter.amps).toBeGreaterThan(3);
    expect(limiter.amps).toBeLessThan(3.01);
    load.ohms = 32;
    c.step(1e-4);
    expect(limiter.limiting).toBe(false);
  });
});
