import { expect, test } from 'vitest';
import { Random } from '../../../src/base/Random.ts';
import { CheckValve } from '../../../src/sim/components/CheckValve.ts';
import { Diaphragm } from '../../../src/sim/components/Diaphragm.ts';
import { Hose, hoseVolume } from '../../../src/sim/components/Hose.ts';
import { LaminarLeak } from '../../../src/sim/components/LaminarLeak.ts';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';
import type { AirPath } from '../../../src/sim/network/AirPart.ts';

const AMBIENT = 101_325;
const T = 293.15;
const out = { q: 0, dFrom: 0, dTo: 0 };

function flow(path: AirPath, pFrom: number, pTo: number): number {
  path.flow(pFrom, pTo, T, out);
  return out.q;
}

test('the slopes each path gives are those of its flow, at random pressures near and far', () => {
  const random = Random.of('slopes', 'pressures');
  const paths: AirPath[] = [
    Orifice.bore(0, 1, 1e-3),
    Orifice.bore(0, 1, 1e-3, { criticalRatio: 0.528, openness: 0.3 }),
    new CheckValve(0, 1, { diameterM: 3e-3, crackingPa: 150 }),
    new CheckValve(0, 1, { diameterM: 3e-3, crackingPa: 150, leakConductance: 1e-11 }),
    new LaminarLeak(0, 1, 1e-9),
  ];
  for (const path of paths) {
    for (let i = 0; i < 400; i++) {
      const p1 = 20_000 + 100_000 * random.next();
      const p2 = i % 2 === 0 ? p1 + 300 * random.symmetric() : 20_000 + 100_000 * random.next();
      path.flow(p1, p2, T, out);
      const { dFrom, dTo } = out;
      const step = 0.01;
      const numericFrom = (flow(path, p1 + step, p2) - flow(path, p1 - step, p2)) / (2 * step);
      const numericTo = (flow(path, p1, p2 + step) - flow(path, p1, p2 - step)) / (2 * step);
      const scale = Math.abs(dFrom) + Math.abs(dTo) + 1e-15;
      expect(Math.abs(numericFrom - dFrom) / scale).toBeLessThan(1e-3);
      expect(Math.abs(numericTo - dTo) / scale).toBeLessThan(1e-3);
      expect(dFrom).toBeGreaterThanOrEqual(0);
      expect(dTo).toBeLessThanOrEqual(0);
    }
  }
});

test('the flow of an orifice is the same both ways, nothing at equal pressures and nothing when shut', () => {
  const orifice = Orifice.bore(0, 1, 0.5e-3);
  expect(flow(orifice, 90_000, 60_000)).toBe(-flow(orifice, 60_000, 90_000));
  expect(flow(orifice, 90_000, 90_000)).toBe(0);
  orifice.openness = 0;
  expect(flow(orifice, 90_000, 60_000)).toBe(0);
});

test('a check valve passes nothing backwards or below its cracking pressure, and its full bore well above', () => {
  const check = new CheckValve(0, 1, { diameterM: 3e-3, crackingPa: 150 });
  expect(flow(check, 60_000, 90_000)).toBe(0);
  expect(flow(check, 90_140, 90_000)).toBe(0);
  expect(flow(check, 90_170, 90_000)).toBeGreaterThan(0);
  expect(flow(check, 91_000, 90_000)).toBe(flow(Orifice.bore(0, 1, 3e-3), 91_000, 90_000));
});

test('a check valve ends at its cracking pressure, in long steps too within half a per cent of full scale', () => {
  for (const h of [0, 1e-4, 1e-3, 0.1, 10]) {
    const net = new AirNetwork(T);
    const high = net.volume('high', 10e-6, 101_000);
    const low = net.volume('low', 10e-6, 40_000);
    net.add(new CheckValve(high, low, { diameterM: 3e-3, crackingPa: 150 }));
    net.compile();
    for (let i = 0; i < 400; i++) net.step(h > 0 ? h : net.suggestStep());
    const left = net.pressure(high) - net.pressure(low);
    expect(Math.abs(left - 150)).toBeLessThan(h > 0 ? 500 : 75);
  }
});

test('a diaphragm between two closed chambers comes to rest where spring and pressures balance', () => {
  const shape = { areaM2: 9e-4, preloadN: 9, rateNPerM: 250, travelM: 22e-3 };
  const net = new AirNetwork(T);
  const upper = net.volume('upper', 26e-6, AMBIENT);
  const lower = net.volume('lower', 400e-6, AMBIENT);
  const source = net.boundary('source', AMBIENT - 57_000);
  const wall = net.add(new Diaphragm(upper, lower, shape));
  const valve = net.add(Orifice.bore(upper, source, 1.6e-3));
  net.compile();
  for (let i = 0; i < 2000 && net.pressure(lower) - net.pressure(upper) < 13_000; i++) net.step(5e-5);
  valve.openness = 0;
  net.step(1);
  const dp = net.pressure(lower) - net.pressure(upper);
  const lift = wall.lift(dp);
  expect(lift).toBeGreaterThan(2e-3);
  expect(lift).toBeLessThan(20e-3);
  expect(shape.areaM2 * dp).toBeCloseTo(shape.preloadN + shape.rateNPerM * lift, 9);
  const RT = 287.0529 * T;
  expect(net.pressure(lower) * (400e-6 + shape.areaM2 * lift)).toBeCloseTo(net.mass(lower) * RT, 9);
  expect(net.pressure(upper) * (26e-6 - shape.areaM2 * lift)).toBeCloseTo(net.mass(upper) * RT, 9);
  expect(net.pressure(lower)).toBeCloseTo((AMBIENT * 400e-6) / (400e-6 + shape.areaM2 * lift), 4); // Boyle
});

test('a piston drawn in a closed cylinder follows Boyle: p·V stays', () => {
  const net = new AirNetwork(T);
  const cylinder = net.volume('cylinder', 50e-6, AMBIENT);
  net.compile();
  net.setVolume(cylinder, 66e-6);
  net.step(0.15);
  expect(net.pressure(cylinder)).toBeCloseTo((AMBIENT * 50) / 66, 6);
  expect(net.ownVolume(cylinder)).toBe(66e-6);
});

test('a hose holds its bore times its length and can be plugged', () => {
  const net = new AirNetwork(T);
  const outside = net.boundary('outside', AMBIENT);
  const jar = net.volume('jar', 1e-3, 60_000);
  const hose = new Hose(net, 'hose', jar, outside, { lengthM: 0.8, boreM: 8e-3 }, 60_000);
  net.compile();
  expect(hoseVolume({ lengthM: 0.8, boreM: 8e-3 })).toBeCloseTo(40.2e-6, 7);
  hose.farEnd.openness = 0;
  net.step(5);
  expect(net.pressure(jar)).toBeCloseTo(60_000, 3);
  hose.farEnd.openness = 1;
  for (let i = 0; i < 20; i++) net.step(0.5);
  expect(net.pressure(jar)).toBeCloseTo(AMBIENT, 1);
});
