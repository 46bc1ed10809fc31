import { expect, test } from 'vitest';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { SweptVolume } from '../../../src/sim/components/SweptVolume.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';
import { LONGEST_AIR_STEP_S } from '../../../src/sim/network/airStepRule.ts';

const AMBIENT = 101_325;

/** A jar that fills through a passage with a leak and, from 0.2 s on, a wide open port. */
function fillingJar() {
  const net = new AirNetwork(293.15);
  const outside = net.boundary('outside', AMBIENT);
  const jar = net.volume('jar', 50e-6, 30_000);
  const passage = net.volume('passage', 10e-6, 30_000);
  net.add(Orifice.bore(outside, passage, 0.5e-3));
  const port = net.add(Orifice.bore(outside, passage, 8e-3, { openness: 0 }));
  net.add(Orifice.bore(passage, jar, 1e-3));
  net.compile();
  return { net, jar, port };
}

test('suggested steps stay within 0.1 % of full scale of steps of 50 µs, through an event, and are far fewer', () => {
  const coarse = fillingJar();
  const fine = fillingJar();
  let steps = 0;
  let t = 0;
  for (const end of [0.1, 0.2, 0.21, 0.25, 0.3, 0.5, 1, 2]) {
    if (end > 0.2) {
      coarse.port.openness = 1;
      fine.port.openness = 1;
    }
    for (let left = end - t; left > 1e-9; ) {
      const h = Math.min(coarse.net.suggestStep(), left);
      coarse.net.step(h);
      left -= h;
      steps++;
    }
    for (let n = Math.round((end - t) / 50e-6); n > 0; n--) fine.net.step(50e-6);
    t = end;
    expect(Math.abs(coarse.net.pressure(coarse.jar) - fine.net.pressure(fine.jar))).toBeLessThan(100);
  }
  expect(steps).toBeLessThan(120);
});

test('air at rest takes the longest step, and a jar that has filled comes to rest', () => {
  const { net, jar, port } = fillingJar();
  port.openness = 1;
  for (let t = 0; t < 20; ) {
    const h = Math.min(net.suggestStep(), 20 - t);
    net.step(h);
    t += h;
  }
  expect(net.suggestStep()).toBe(LONGEST_AIR_STEP_S);
  expect(Math.abs(net.pressure(jar) - AMBIENT)).toBeLessThan(0.01);
  const before = net.state();
  net.step(LONGEST_AIR_STEP_S);
  expect(net.pressure(jar)).toBe(before[3]); // masses first, then pressures by node: outside, jar
});

test('an announced stroke shortens the step before it begins', () => {
  const net = new AirNetwork(293.15);
  net.boundary('outside', AMBIENT);
  const cylinder = new SweptVolume(net, 'cylinder', 50e-6, 16e-6, AMBIENT);
  net.compile();
  for (let i = 0; i < 20; i++) net.step(net.suggestStep());
  expect(net.suggestStep()).toBe(LONGEST_AIR_STEP_S);
  cylinder.announce(1 / 0.15);
  const h = net.suggestStep();
  expect(h).toBeLessThan(0.02);
  cylinder.moveTo(h / 0.15);
  net.step(h);
  const boyle = (AMBIENT * 50e-6) / (50e-6 + (16e-6 * h) / 0.15);
  expect(Math.abs(net.pressure(cylinder.node) - boyle)).toBeLessThan(0.01);
  expect(cylinder.drawn).toBeCloseTo(h / 0.15, 12);
});

test('a step worked out ahead is taken to the same last bit as one that was not', () => {
  const ahead = fillingJar();
  const plain = fillingJar();
  for (let i = 0; i < 40; i++) {
    const h = ahead.net.suggestStep();
    expect(plain.net.suggestStep()).toBe(h);
    plain.net.foresee(0.5 * h); // something else, so that the step is to be worked out again
    ahead.net.step(h);
    plain.net.step(h);
    expect(plain.net.state()).toEqual(ahead.net.state());
  }
});

test('a step ends close behind a level, whichever way it is passed', () => {
  const net = new AirNetwork(293.15);
  const outside = net.boundary('outside', AMBIENT);
  const jar = net.volume('jar', 40e-3, AMBIENT - 2500);
  net.add(Orifice.bore(outside, jar, 0.5e-3));
  const level = AMBIENT - 1900;
  net.level(jar, level);
  net.compile();
  const passing = (): number => {
    const below = net.pressure(jar) < level;
    for (let i = 0; i < 1000; i++) {
      net.step(net.suggestStep());
      if (net.pressure(jar) < level !== below) return Math.abs(net.pressure(jar) - level);
    }
    return Number.POSITIVE_INFINITY;
  };
  expect(passing()).toBeLessThan(3);
  net.refill(jar, AMBIENT - 1000);
  net.setBoundary(outside, AMBIENT - 3000);
  expect(passing()).toBeLessThan(3);
});
