import { describe, expect, test } from 'vitest';
import { Inductor } from '../../src/sim/components/Inductor.ts';
import { VoltageSource } from '../../src/sim/components/VoltageSource.ts';
import { Circuit } from '../../src/sim/network/Circuit.ts';

/**
 * Source of all numbers but where said: University Physics Volume 2 (OpenStax), section 14.4, "RL circuits".
 * Tolerance: half a unit of the last printed digit. Where the book prints no answer, the closed form
 * i = (E/R)(1 − e^(−t/τ)) stands in, computed by hand here, and the tolerance is 0.5 %.
 */
function coilOn(volts: number, ohms: number, henries: number) {
  const circuit = new Circuit();
  const feed = circuit.node('feed');
  const source = circuit.add(new VoltageSource(feed, 0, volts));
  const coil = circuit.add(new Inductor(feed, 0, henries, ohms));
  circuit.compile();
  const run = (seconds: number, h: number) => {
    for (let i = Math.round(seconds / h); i > 0; i--) expect(circuit.step(h).converged).toBe(true);
  };
  return { coil, source, run, coilVolts: () => circuit.voltage(feed) - coil.amps * ohms };
}

describe('coil current (University Physics 2, 14.4)', () => {
  test('worked example: 2.0 V, 4.0 Ω, 4.0 H rises to 0.43 A at 2 τ and 0.50 A at last', () => {
    const { coil, run, coilVolts } = coilOn(2, 4, 4);
    expect(coil.amps).toBe(0);
    run(1e-4, 1e-4);
    expect(coilVolts()).toBeCloseTo(2.0, 2);
    run(2 - 1e-4, 1e-4);
    expect(Math.abs(coil.amps - 0.43)).toBeLessThan(0.005);
    expect(Math.abs(coilVolts() - 0.27)).toBeLessThan(0.005);
    run(18, 1e-3);
    expect(Math.abs(coil.amps - 0.5)).toBeLessThan(0.005);
    expect(Math.abs(coilVolts())).toBeLessThan(0.005);
  });

  test('the same with the source taken away: half the current at 0.69 s, one per cent of the energy at 2.3 s', () => {
    const { coil, source, run } = coilOn(2, 4, 4);
    coil.setAmps(0.5);
    source.volts = 0;
    const joules = coil.joules;
    expect(joules).toBeCloseTo(0.5, 12);
    run(0.69, 1e-4);
    expect(Math.abs(coil.amps / 0.5 - 0.5)).toBeLessThan(0.005);
    run(2.3 - 0.69, 1e-4);
    expect(Math.abs((coil.joules / joules) * 100 - 1.0)).toBeLessThan(0.05);
  });

  test('check your understanding: 90 % in 5.0 s needs 43 H at 20 Ω; at 100 Ω the same coil takes 1.0 s', () => {
    const first = coilOn(20, 20, 43);
    first.run(5, 1e-3);
    expect(Math.abs(first.coil.amps - 0.9)).toBeLessThan(0.005);
    const second = coilOn(100, 100, 43);
    second.run(1, 1e-4);
    expect(Math.abs(second.coil.amps - 0.9)).toBeLessThan(0.005);
  });

  test('problem of solenoid size: 12 V, 5.0 Ω, 20 mH, at the bench’s tick of 50 µs (closed form: 2.0752 A, 1.624 V at 2 τ)', () => {
    const { coil, run, coilVolts } = coilOn(12, 5, 0.02);
    run(8e-3, 5e-5);
    expect(Math.abs(coil.amps / 2.0752 - 1)).toBeLessThan(0.005);
    // The small remainder 12 V − 5 Ω i carries the same error in amps, times 5 Ω: 0.5 % of 12 V.
    expect(Math.abs(coilVolts() - 1.62402)).toBeLessThan(0.06);
    run(0.2, 5e-5);
    expect(coil.amps).toBeCloseTo(2.4, 9);
  });

  test('every tick of that rise stays within 0.5 % of the final current of the closed form', () => {
    const { coil, run } = coilOn(12, 5, 0.02);
    let worst = 0;
    for (let tick = 1; tick <= 400; tick++) {
      run(5e-5, 5e-5);
      const exact = 2.4 * (1 - Math.exp((-tick * 5e-5) / 4e-3));
      worst = Math.max(worst, Math.abs(coil.amps - exact) / 2.4);
    }
    expect(worst).toBeLessThan(0.005);
    expect(worst).toBeGreaterThan(0);
  });
});
