import { expect, test } from 'vitest';
import { inHgToPa, paToInHg } from '../../src/base/units.ts';
import { Diaphragm } from '../../src/sim/components/Diaphragm.ts';
import { REFERENCE_DENSITY } from '../../src/sim/components/FlowLaw.ts';
import { LaminarLeak } from '../../src/sim/components/LaminarLeak.ts';
import { Orifice } from '../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../src/sim/network/AirNetwork.ts';

const T = 293.15;
const AMBIENT = 101_325;
const MOLAR_GAS_CONSTANT = 8.314472;
const SPECIFIC_GAS_CONSTANT = 287.0529;

test('vacuum-decay worked example of 40 CFR 1065.644: 2 L from 25.300 to 50.600 kPa in 70 s is 2.966e-4 mol/s', () => {
  // Inputs as printed in the regulation. A fixed orifice is choked all the way (50.6 kPa is below 0.5 of ambient for b = 0.5),
  // so its conductance follows from the rate alone: C·ρ0·p1 = (V/RT)·Δp/Δt at the reference temperature.
  const m3 = 2.0e-3;
  const kgPerS = (m3 * (50_600 - 25_300)) / (SPECIFIC_GAS_CONSTANT * T * 70);
  const net = new AirNetwork(T);
  const outside = net.boundary('outside', AMBIENT);
  const system = net.volume('system', m3, 25_300);
  net.add(new Orifice(outside, system, kgPerS / (REFERENCE_DENSITY * AMBIENT), { criticalRatio: 0.5 }));
  net.compile();
  const curve = [25_300];
  for (let t = 0; t < 70 - 1e-9; ) {
    const h = Math.min(net.suggestStep(), 10 * curve.length - t);
    net.step(h);
    t += h;
    if (t > 10 * curve.length - 1e-9) curve.push(net.pressure(system));
  }
  expect(curve).toHaveLength(8);
  const end = curve[7] as number;
  expect(end).toBeCloseTo(50_600, 1);
  // the regulation's equation: n = (V/R)·(p2/T2 − p1/T1)/(t2 − t1)
  const molPerS = ((m3 / MOLAR_GAS_CONSTANT) * (end / T - 25_300 / T)) / 70;
  expect(molPerS).toBeCloseTo(2.966e-4, 7);
  // and the same amount of air came in from outside
  const molarMass = MOLAR_GAS_CONSTANT / SPECIFIC_GAS_CONSTANT;
  expect(net.boundaryInflow(outside) / molarMass / 70).toBeCloseTo(2.966e-4, 7);
  // straight line: choked flow does not know the pressure behind it
  for (let i = 1; i < curve.length; i++) {
    expect(((curve[i] as number) - (curve[i - 1] as number)) / 10).toBeCloseTo(361.4, 1);
  }
});

test('above the critical ratio the same line bends: the straightness is the choking, not the solver', () => {
  const net = new AirNetwork(T);
  const outside = net.boundary('outside', AMBIENT);
  const system = net.volume('system', 2e-3, 60_000);
  net.add(Orifice.bore(outside, system, 1e-3));
  net.compile();
  const rates: number[] = [];
  for (let i = 0; i < 6; i++) {
    const before = net.pressure(system);
    for (let n = 0; n < 20; n++) net.step(0.1);
    rates.push((net.pressure(system) - before) / 2);
  }
  for (let i = 1; i < rates.length; i++)
    expect(rates[i] as number).toBeLessThan(0.97 * (rates[i - 1] as number));
});

/** A vacuum diaphragm and its line at 18.0 inHg, with a leak of the given bore, after 15 s. */
function heldDiaphragm(leakM: number): { readonly lossInHg: number; readonly liftLossM: number } {
  const net = new AirNetwork(T);
  const outside = net.boundary('outside', AMBIENT);
  const chamber = net.volume('chamber and line', 60e-6, AMBIENT - inHgToPa(18.0));
  const wall = net.add(
    new Diaphragm(chamber, outside, { areaM2: 9e-4, preloadN: 9, rateNPerM: 3000, travelM: 22e-3 }),
  );
  net.add(Orifice.bore(outside, chamber, leakM));
  net.compile();
  const lift = wall.lift(inHgToPa(18.0));
  for (let t = 0; t < 15 - 1e-9; ) {
    const h = Math.min(net.suggestStep(), 15 - t);
    net.step(h);
    t += h;
  }
  const vacuum = AMBIENT - net.pressure(chamber);
  return { lossInHg: 18.0 - paToInHg(vacuum), liftLossM: lift - wall.lift(vacuum) };
}

test('vacuum-break criterion of 40 CFR Part 85 Subpart V appendix I: 18.0 inHg, sealed, shows no drop in 15 s', () => {
  const sealed = heldDiaphragm(0);
  expect(Math.abs(sealed.lossInHg)).toBeLessThan(1e-6);
  expect(Math.abs(sealed.liftLossM)).toBeLessThan(1e-9);
  const pinhole = heldDiaphragm(0.1e-3); // a tenth of a millimetre already fails it
  expect(pinhole.lossInHg).toBeGreaterThan(1);
  expect(pinhole.liftLossM).toBeGreaterThan(1e-3);
});

test('a linear leak decays exponentially: 36.8 % left after one time constant (first-order law)', () => {
  const m3 = 1e-3;
  const conductance = 1e-10; // kg/(s·Pa)
  const tau = m3 / (SPECIFIC_GAS_CONSTANT * T * conductance);
  const net = new AirNetwork(T);
  const outside = net.boundary('outside', AMBIENT);
  const jar = net.volume('jar', m3, AMBIENT - 10_000);
  net.add(new LaminarLeak(outside, jar, conductance));
  net.compile();
  for (let n = 1; n <= 3; n++) {
    for (let i = 0; i < 100; i++) net.step(tau / 100);
    expect(Math.abs((AMBIENT - net.pressure(jar)) / 10_000 - Math.exp(-n))).toBeLessThan(2e-5);
  }
});
