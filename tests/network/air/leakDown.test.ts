import { expect, test } from 'vitest';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';

const AMBIENT = 101_325;
/** Half a per cent of 100 kPa: the most that one coarse step may overshoot. */
const OVERSHOOT = 500;

function leakDown(diameterM: number, m3: number, startPa: number) {
  const net = new AirNetwork(293.15);
  const outside = net.boundary('outside', AMBIENT);
  const jar = net.volume('jar', m3, startPa);
  net.add(Orifice.bore(outside, jar, diameterM));
  net.compile();
  return { net, outside, jar };
}

test('a 0.2 mm leak and an open 8 mm port on 10 mL are stable at every step from 50 µs to 10 s', () => {
  for (const diameterM of [0.2e-3, 8e-3]) {
    for (let h = 50e-6; h <= 10; h *= 1.7) {
      const { net, jar } = leakDown(diameterM, 10e-6, 40_000);
      let last = 40_000;
      for (let i = 0; i < 60; i++) {
        expect(net.step(h).converged).toBe(true);
        const now = net.pressure(jar);
        expect(now).toBeGreaterThan(last - OVERSHOOT);
        expect(now).toBeLessThan(AMBIENT + OVERSHOOT);
        last = now;
      }
      // 60 steps are at least 3 ms; an 8 mm port fills 10 mL in about 0.1 ms, so it must be full at any step
      if (diameterM === 8e-3) expect(Math.abs(last - AMBIENT)).toBeLessThan(1);
      if (h > 2) expect(Math.abs(last - AMBIENT)).toBeLessThan(1);
    }
  }
});

test('the mass agrees with the pressure and with what the outside gave', () => {
  const { net, outside, jar } = leakDown(1e-3, 50e-6, 40_000);
  const before = net.totalMass();
  for (let i = 0; i < 500; i++) net.step(net.suggestStep());
  expect(net.pressure(jar)).toBeGreaterThan(90_000);
  expect(net.mass(jar) * 287.0529 * 293.15).toBeCloseTo(net.pressure(jar) * 50e-6, 9);
  expect(net.totalMass() - before).toBeCloseTo(net.boundaryInflow(outside), 18);
});
