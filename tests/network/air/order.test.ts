import { expect, test } from 'vitest';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';

/** A smooth case: a jar filling through two restrictions while a piston draws, away from choking and from equality. */
function endPressure(steps: number): number {
  const net = new AirNetwork(293.15);
  const outside = net.boundary('outside', 101_325);
  const first = net.volume('first', 50e-6, 85_000);
  const second = net.volume('second', 120e-6, 65_000);
  net.add(Orifice.bore(outside, first, 0.5e-3));
  net.add(Orifice.bore(first, second, 0.5e-3));
  net.compile();
  const seconds = 0.25;
  for (let n = 1; n <= steps; n++) {
    net.setVolume(second, 120e-6 * (1 + (0.1 * n) / steps));
    net.step(seconds / steps);
  }
  return net.pressure(second);
}

test('halving the step cuts the error about four times: the scheme is of second order', () => {
  const exact = endPressure(8192);
  const errors = [8, 16, 32, 64].map((steps) => Math.abs(endPressure(steps) - exact));
  for (let i = 1; i < errors.length; i++) {
    const ratio = (errors[i - 1] as number) / (errors[i] as number);
    expect(ratio).toBeGreaterThan(3.4);
    expect(ratio).toBeLessThan(4.6);
  }
});
