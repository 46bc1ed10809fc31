import { expect, test } from 'vitest';
import { build, type NetworkPlan, randomPlan } from './randomNetwork.ts';
import { integrate } from './reference.ts';

// Source of the expected values: the npm package odex 2.0.4 (E. Hairer and G. Wanner's ODEX, an extrapolation method;
// Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I) on the equations written out in reference.ts.

const NETWORKS = 50;
const SECONDS = 2;
const SAMPLES = 40;
const FULL_SCALE_PA = 100_000;

/** The largest difference from the reference at any sample, Pa. */
function worstMiss(plan: NetworkPlan): number {
  const expected = integrate(plan, SECONDS, SAMPLES);
  const { net, nodes, outside } = build(plan);
  const sweptNode = nodes[plan.swept.node] as number;
  const ownM3 = plan.volumesM3[plan.swept.node] as number;
  const rate = (ownM3 * (plan.swept.growth - 1)) / SECONDS;
  net.announceSweep(sweptNode, rate);
  let t = 0;
  const run = (end: number): void => {
    while (t < end - 1e-9) {
      const h = Math.min(net.suggestStep(), end - t);
      net.setVolume(sweptNode, ownM3 + rate * (t + h));
      if (!net.step(h).converged) throw new Error(`no pressures at ${t} s`);
      t += h;
    }
  };
  let worst = 0;
  for (const [sample, row] of expected.entries()) {
    const end = ((sample + 1) * SECONDS) / SAMPLES;
    for (const { atS, pa } of plan.outsideSteps) {
      if (atS < t || atS >= end) continue;
      run(atS);
      net.setBoundary(outside, pa);
    }
    run(end);
    nodes.forEach((node, i) => {
      worst = Math.max(worst, Math.abs(net.pressure(node) - (row[i] as number)));
    });
  }
  return worst;
}

test(`${NETWORKS} random networks stay within 0.5 % of full scale of ODEX at every sample`, () => {
  const misses = Array.from({ length: NETWORKS }, (_, n) =>
    worstMiss(randomPlan(`reference-${n}`, 4 + (n % 5))),
  );
  const worst = Math.max(...misses);
  console.info(
    `worst of ${NETWORKS} air networks against ODEX: ${worst.toFixed(1)} Pa of ${FULL_SCALE_PA} Pa`,
  );
  expect(worst).toBeLessThan(0.005 * FULL_SCALE_PA);
}, 120_000);
