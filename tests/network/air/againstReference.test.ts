import { expect, test } from 'vitest';
import { build, randomPlan } from './randomNetwork.ts';
import { integrate } from './reference.ts';

const SECONDS = 2;
const SAMPLES = 40;
const FULL_SCALE_PA = 100_000;

test('ten random networks stay within 0.5 % of full scale of a separate Runge–Kutta integration, at every sample', () => {
  let worst = 0;
  for (let n = 0; n < 10; n++) {
    const plan = randomPlan(`reference-${n}`, 4 + (n % 4));
    const expected = integrate(plan, SECONDS, SAMPLES, 250);
    const { net, nodes } = build(plan);
    const sweptNode = nodes[plan.swept.node] as number;
    const ownM3 = plan.volumesM3[plan.swept.node] as number;
    const rate = (ownM3 * (plan.swept.growth - 1)) / SECONDS;
    net.announceSweep(sweptNode, rate);
    let t = 0;
    for (let sample = 0; sample < SAMPLES; sample++) {
      const end = ((sample + 1) * SECONDS) / SAMPLES;
      while (t < end - 1e-9) {
        const h = Math.min(net.suggestStep(), end - t);
        net.setVolume(sweptNode, ownM3 + rate * (t + h));
        expect(net.step(h).converged).toBe(true);
        t += h;
      }
      const row = expected[sample] as number[];
      nodes.forEach((node, i) => {
        worst = Math.max(worst, Math.abs(net.pressure(node) - (row[i] as number)));
      });
    }
  }
  expect(worst).toBeLessThan(0.005 * FULL_SCALE_PA);
}, 120_000);
