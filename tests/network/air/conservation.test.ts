import { expect, test } from 'vitest';
import { Random } from '../../../src/base/Random.ts';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { type BuiltPlan, build, type NetworkPlan, randomPlan } from './randomNetwork.ts';

/** One step of random length with swept moves and valves opened and shut at random. */
function disturbAndStep(plan: NetworkPlan, built: BuiltPlan, random: Random): number {
  const { net, nodes, parts } = built;
  const draw = random.next();
  const h =
    draw < 0.3
      ? 50e-6 + 1e-3 * random.next()
      : draw < 0.8
        ? 0.2 * random.next() + 1e-4
        : 10 * random.next() + 1e-4;
  const swept = nodes[plan.swept.node] as number;
  if (random.next() < 0.5)
    net.setVolume(swept, (plan.volumesM3[plan.swept.node] as number) * (0.5 + random.next()));
  const part = parts[Math.floor(random.next() * parts.length)];
  if (part instanceof Orifice && random.next() < 0.3) part.openness = random.next() < 0.3 ? 0 : random.next();
  expect(net.step(h).converged).toBe(true);
  return h;
}

test('mass is conserved to 1e-9 over an hour of random steps, swept moves and valves', () => {
  for (let n = 0; n < 3; n++) {
    const plan = randomPlan(`hour-${n}`, 6);
    const built = build(plan);
    const random = Random.of(`hour-${n}`, 'steps');
    const start = built.net.totalMass();
    for (let t = 0; t < 3600; ) t += disturbAndStep(plan, built, random);
    const gained = built.net.totalMass() - start;
    const given = built.net.boundaryInflow(built.outside);
    expect(Math.abs(given)).toBeGreaterThan(1e-3 * start); // the outside took part
    expect(Math.abs(gained - given)).toBeLessThan(1e-9 * start);
  }
});

test('pressures stay positive and agree with the masses after an hour of it', () => {
  const plan = randomPlan('agree', 6);
  const built = build(plan);
  const random = Random.of('agree', 'steps');
  const plain = built.nodes.filter((_, i) => i !== plan.diaphragm.upper && i !== plan.diaphragm.lower);
  for (let t = 0; t < 3600; ) {
    t += disturbAndStep(plan, built, random);
    for (const node of built.nodes) expect(built.net.pressure(node)).toBeGreaterThan(0);
    for (const node of plain) {
      const fromMass = (built.net.mass(node) * 287.0529 * 293.15) / built.net.ownVolume(node);
      expect(Math.abs(built.net.pressure(node) / fromMass - 1)).toBeLessThan(1e-9);
    }
  }
});

test('a restored state goes on to the last bit', () => {
  const plan = randomPlan('restore', 6);
  const one = build(plan);
  const two = build(plan);
  const random = Random.of('restore', 'steps');
  for (let i = 0; i < 50; i++) disturbAndStep(plan, one, random);
  one.net.announceSweep(one.nodes[0] as number, 1e-6);
  one.net.setVolume(one.nodes[1] as number, 33e-6); // a ramp still to come is part of the state
  const state = JSON.parse(JSON.stringify(one.net.state())) as number[];
  two.net.restore(state);
  const again = Random.restore(random.state);
  for (let i = 0; i < 50; i++) {
    expect(two.net.suggestStep()).toBe(one.net.suggestStep());
    disturbAndStep(plan, one, random);
    disturbAndStep(plan, two, again);
  }
  expect(two.net.state()).toEqual(one.net.state());
  expect(two.net.state()).not.toEqual(state);
  one.net.restore(state);
  expect(one.net.state()).toEqual(state);
});

test('a state of another layout is refused', () => {
  const { net } = build(randomPlan('layout', 4));
  expect(() => net.restore(build(randomPlan('layout', 5)).net.state())).toThrow('another layout');
});
