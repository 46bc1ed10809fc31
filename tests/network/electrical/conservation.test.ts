import { expect, test } from 'vitest';
import { LEAK_SIEMENS } from '../../../src/sim/network/CircuitSolver.ts';
import { randomNetwork } from './randomNetwork.ts';

test('on 100 random networks, settled and in time, currents balance at every node and powers sum to nothing', () => {
  let worstAmps = 0;
  let worstShare = 0;
  let slowest = 0;
  for (let i = 0; i < 100; i++) {
    const { circuit, contacts } = randomNetwork(`conservation-${i}`);
    const check = () => {
      worstAmps = Math.max(worstAmps, circuit.kclResidual());
      // Tellegen: whatever parts there are, the powers into them and into the leaks sum to nothing.
      let sum = 0;
      let size = 0;
      for (const part of circuit.parts) {
        const watts = (circuit.voltage(part.a) - circuit.voltage(part.b)) * part.amps;
        sum += watts;
        size += Math.abs(watts);
      }
      for (const node of circuit.nodeNames.keys()) sum += circuit.voltage(node) ** 2 * LEAK_SIEMENS;
      worstShare = Math.max(worstShare, Math.abs(sum) / Math.max(size, 1e-3));
    };
    expect(circuit.solveDc().converged, `network ${i}`).toBe(true);
    check();
    for (const contact of contacts) contact.closed = !contact.closed;
    for (let step = 0; step < 30; step++) {
      const { converged, iterations } = circuit.step(step % 2 === 0 ? 5e-5 : 1e-3);
      expect(converged, `network ${i} step ${step}`).toBe(true);
      slowest = Math.max(slowest, iterations);
      check();
    }
  }
  console.info(
    `worst imbalance ${worstAmps.toExponential(2)} A, of powers ${worstShare.toExponential(2)}; most solves in a step ${slowest}`,
  );
  expect(worstAmps).toBeLessThan(1e-9);
  expect(worstShare).toBeLessThan(1e-8);
  // The chance that a change of modes was never needed would make this test empty.
  expect(slowest).toBeGreaterThan(1);
});
