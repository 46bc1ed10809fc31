import { expect, test } from 'vitest';
import { CoilTransient } from './coilTransient.ts';

test('the transient of the benchmark agrees with ngspice 45 within 0.1 % over the whole second', async () => {
  const transient = new CoilTransient();
  transient.ours();
  // 50 µs is one tick: fine enough for straight lines between SPICE's points.
  const { amps, volts } = transient.difference(await transient.theirs(50e-6));
  console.info(
    `coil ${amps.toExponential(2)}, sense ${volts.toExponential(2)} of the largest in ${transient.steps} steps`,
  );
  expect(transient.steps).toBeGreaterThan(10);
  expect(amps).toBeLessThan(1e-3);
  expect(volts).toBeLessThan(1e-3);
  // The check can fail: the sense line moves by far more than that.
  const { senseVolts } = transient;
  expect(Math.abs((senseVolts[0] as number) - (senseVolts[transient.steps - 1] as number))).toBeGreaterThan(
    0.05,
  );
}, 60_000);
