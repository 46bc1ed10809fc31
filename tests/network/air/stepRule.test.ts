import { expect, test } from 'vitest';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { SweptVolume } from '../../../src/sim/components/SweptVolume.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';

const AMBIENT = 101_325;

test('no pressure moves much more than 150 Pa or 1 % of its distance to ambient in a suggested step', () => {
  const net = new AirNetwork(293.15);
  const outside = net.boundary('outside', AMBIENT);
  const jar = net.volume('jar', 50e-6, 30_000);
  const passage = net.volume('passage', 10e-6, 30_000);
  net.add(Orifice.bore(outside, passage, 0.5e-3));
  const port = net.add(Orifice.bore(outside, passage, 8e-3, { openness: 0 }));
  net.add(Orifice.bore(passage, jar, 2e-3));
  net.compile();
  let last = 1e-3;
  for (let t = 0; t < 20; ) {
    if (t > 0.2) port.openness = 1; // an event between two steps
    const before = [net.pressure(jar), net.pressure(passage)];
    const h = net.suggestStep();
    expect(h).toBeLessThanOrEqual(Math.max(2 * last, 50e-6));
    expect(h).toBeGreaterThanOrEqual(50e-6);
    net.step(h);
    const fastest = Math.max(
      Math.abs(net.pressure(jar) - (before[0] as number)),
      Math.abs(net.pressure(passage) - (before[1] as number)),
    );
    expect(net.maxRate()).toBeCloseTo(fastest / h, 6);
    [jar, passage].forEach((node, i) => {
      const start = before[i] as number;
      const allowed = Math.max(150, 0.01 * (AMBIENT - start));
      // the shortest step cannot hold a wide open port back; elsewhere a little over is the linear forecast's error
      if (h > 50e-6) expect(Math.abs(net.pressure(node) - start)).toBeLessThan(1.3 * allowed);
    });
    last = h;
    t += h;
  }
  expect(last).toBe(5); // nothing moves any more: the longest step
  expect(Math.abs(net.pressure(jar) - AMBIENT)).toBeLessThan(0.01);
});

test('an announced stroke shortens the step before it begins', () => {
  const net = new AirNetwork(293.15);
  net.boundary('outside', AMBIENT);
  const cylinder = new SweptVolume(net, 'cylinder', 50e-6, 16e-6, AMBIENT);
  net.compile();
  for (let i = 0; i < 20; i++) net.step(net.suggestStep());
  expect(net.suggestStep()).toBe(5);
  cylinder.announce(1 / 0.15);
  const h = net.suggestStep();
  expect(h).toBeLessThan(1e-3);
  cylinder.moveTo(h / 0.15);
  net.step(h);
  expect(AMBIENT - net.pressure(cylinder.node)).toBeGreaterThan(50);
  expect(AMBIENT - net.pressure(cylinder.node)).toBeLessThan(200);
  expect(cylinder.drawn).toBeCloseTo(h / 0.15, 12);
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
