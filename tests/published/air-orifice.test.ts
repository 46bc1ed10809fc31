import { expect, test } from 'vitest';
import { inH2OToPa, PA_PER_PSI } from '../../src/base/units.ts';
import { boreArea, restrictionFlow, sonicConductance } from '../../src/sim/components/FlowLaw.ts';
import { Orifice } from '../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../src/sim/network/AirNetwork.ts';

const T = 293.15;
const AMBIENT = 101_325;
const R = 287.0529;
const GAMMA = 1.4;
const out = { q: 0, dFrom: 0, dTo: 0 };

function flow(conductance: number, b: number, p1: number, p2: number): number {
  restrictionFlow(conductance, b, p1, p2, T, out);
  return out.q;
}

/** Isentropic nozzle flow as a fraction of its choked flow (textbook gas dynamics), written here on its own. */
function isentropicFactor(r: number): number {
  const critical = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));
  const psi = (x: number) => Math.sqrt(x ** (2 / GAMMA) - x ** ((GAMMA + 1) / GAMMA));
  return r <= critical ? 1 : psi(r) / psi(critical);
}

test('critical pressure ratio of air is 0.5283 (textbook gas dynamics) and the flow stops growing below it', () => {
  const critical = (2 / (GAMMA + 1)) ** (GAMMA / (GAMMA - 1));
  expect(critical).toBeCloseTo(0.52828, 5);
  const C = sonicConductance(boreArea(1e-3));
  const choked = flow(C, critical, AMBIENT, 0.3 * AMBIENT);
  expect(flow(C, critical, AMBIENT, 0.52 * AMBIENT)).toBe(choked);
  expect(flow(C, critical, AMBIENT, 0.55 * AMBIENT)).toBeLessThan(choked);
});

test('the ISO 6358 ellipse with b = 0.528 follows isentropic flow within 0.35 %', () => {
  // flow factors of both, computed from their stated formulas: ratio, ellipse, isentropic
  const table = [
    [0.95, 0.4479, 0.4493],
    [0.9, 0.6155, 0.6171],
    [0.8, 0.8173, 0.8188],
    [0.7, 0.9312, 0.9322],
    [0.6, 0.9883, 0.9886],
  ] as const;
  const C = sonicConductance(boreArea(1e-3));
  for (const [r, ellipse, isentropic] of table) {
    const factor = flow(C, 0.528, AMBIENT, r * AMBIENT) / flow(C, 0.528, AMBIENT, 0.1 * AMBIENT);
    expect(Math.abs(factor - ellipse)).toBeLessThan(6e-5);
    expect(Math.abs(isentropicFactor(r) - isentropic)).toBeLessThan(6e-5);
    expect(Math.abs(factor / isentropicFactor(r) - 1)).toBeLessThan(0.0035);
  }
});

test('choked flow is Cd·A·p1·0.040415/√T (isentropic nozzle, textbook gas dynamics)', () => {
  const area = boreArea(1e-3);
  const q = flow(sonicConductance(area, 0.6), 0.5, AMBIENT, 20_000);
  expect(q / ((0.6 * area * AMBIENT * 0.040415) / Math.sqrt(T))).toBeCloseTo(1, 4);
});

test('sonic conductance from area: C = 0.1992·Cd·A in dm³/(s·bar) and mm² (ISO 6358 with ISO 8778 reference, computed)', () => {
  const dm3PerSBar = (m3PerSPa: number) => m3PerSPa * 1e3 * 1e5;
  expect(dm3PerSBar(sonicConductance(1e-6, 1))).toBeCloseTo(0.1992, 4);
  expect(dm3PerSBar(sonicConductance(boreArea(0.5e-3), 0.6))).toBeCloseTo(0.0235, 4);
  expect(dm3PerSBar(sonicConductance(boreArea(1e-3), 0.6))).toBeCloseTo(0.0939, 4);
});

test('a 0.040 in bore passes exactly four times as much as a 0.020 in one at equal pressures', () => {
  for (const gaugePa of [249, 1868, 3500, 60_000]) {
    const small = flow(sonicConductance(boreArea(0.508e-3)), 0.5, AMBIENT + gaugePa, AMBIENT);
    const large = flow(sonicConductance(boreArea(1.016e-3)), 0.5, AMBIENT + gaugePa, AMBIENT);
    expect(large / small).toBeCloseTo(4, 9);
  }
});

test('reference-leak flows in L/min at 20 °C and 101 325 Pa: isentropic, Cd 0.60, computed from the stated formula', () => {
  const table = [
    [inH2OToPa(1), 0.148, 0.594],
    [inH2OToPa(7.5), 0.406, 1.625],
    [inH2OToPa(14), 0.555, 2.219],
    [PA_PER_PSI, 0.779, 3.116],
  ] as const;
  const litresPerMinute = (kgPerS: number) => (kgPerS * R * T * 60_000) / AMBIENT;
  for (const [gaugePa, small, large] of table) {
    [small, large].forEach((expected, i) => {
      const C = sonicConductance(boreArea((i + 1) * 0.508e-3), 0.6);
      const got = litresPerMinute(flow(C, 0.528, AMBIENT + gaugePa, AMBIENT));
      expect(Math.abs(got / expected - 1)).toBeLessThan(0.005); // the ellipse against the isentropic curve
    });
  }
});

test('choked fill rates of 50 mL, 100 mL and 2 L through 0.5 mm, Cd 0.6: 47.4, 23.7 and 1.19 kPa/s (dp/dt = R·T·q/V, computed)', () => {
  const table = [
    [50e-6, 47.4],
    [100e-6, 23.7],
    [2e-3, 1.19],
  ] as const;
  for (const [m3, kPaPerS] of table) {
    const net = new AirNetwork(T);
    const outside = net.boundary('outside', AMBIENT);
    const jar = net.volume('jar', m3, 5_000);
    net.add(Orifice.bore(outside, jar, 0.5e-3, { dischargeCoefficient: 0.6 }));
    net.compile();
    const seconds = 20_000 / (kPaPerS * 1000); // to about 25 kPa, well choked
    for (let i = 0; i < 20; i++) net.step(seconds / 20);
    const rate = (net.pressure(jar) - 5_000) / seconds;
    expect(Math.abs(rate / (kPaPerS * 1000) - 1)).toBeLessThan(0.005);
  }
});
