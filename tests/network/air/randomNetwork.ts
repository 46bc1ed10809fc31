import { Random } from '../../../src/base/Random.ts';
import { CheckValve } from '../../../src/sim/components/CheckValve.ts';
import { Diaphragm } from '../../../src/sim/components/Diaphragm.ts';
import { LaminarLeak } from '../../../src/sim/components/LaminarLeak.ts';
import { Orifice } from '../../../src/sim/components/Orifice.ts';
import { AirNetwork } from '../../../src/sim/network/AirNetwork.ts';

export const TEMPERATURE_K = 293.15;
export const AMBIENT_PA = 101_325;

/** A network as plain numbers, so that a second solver can be fed with the same one. */
export interface NetworkPlan {
  readonly volumesM3: readonly number[];
  readonly startPa: readonly number[];
  readonly orifices: readonly { readonly a: number; readonly b: number; readonly diameterM: number }[];
  readonly checks: readonly {
    readonly a: number;
    readonly b: number;
    readonly diameterM: number;
    readonly crackPa: number;
  }[];
  /** Laminar leaks, kg/(s·Pa). */
  readonly laminar: readonly { readonly a: number; readonly b: number; readonly conductance: number }[];
  /** What the outside air's pressure becomes, and when. */
  readonly outsideSteps: readonly { readonly atS: number; readonly pa: number }[];
  readonly diaphragm: { readonly upper: number; readonly lower: number };
  /** The swept volume's own size grows evenly by this factor over the run. */
  readonly swept: { readonly node: number; readonly growth: number };
}

export const DIAPHRAGM = { areaM2: 9e-4, preloadN: 3, rateNPerM: 800, travelM: 8e-3 } as const;
/** The outside air's place in a plan. */
export const OUTSIDE = -1;

/** A chain of volumes with cross links, one port to the outside, check valves, a diaphragm and a swept volume. */
export function randomPlan(seed: string, count: number): NetworkPlan {
  const random = Random.of(seed, 'air-plan');
  const between = (low: number, high: number) => low + (high - low) * random.next();
  const bore = () => between(0.2e-3, 0.7e-3);
  const any = () => Math.floor(random.next() * count);
  const volumesM3 = Array.from({ length: count }, () => between(20e-6, 200e-6));
  const startPa = volumesM3.map(() => between(25_000, 120_000));
  const orifices = [{ a: OUTSIDE, b: any(), diameterM: bore() }];
  for (let i = 1; i < count; i++) orifices.push({ a: i - 1, b: i, diameterM: bore() });
  const checks = [];
  for (let i = 0; i < 3; i++) {
    const a = any();
    checks.push({
      a,
      b: (a + 1 + Math.floor(random.next() * (count - 1))) % count,
      diameterM: bore(),
      crackPa: 150,
    });
  }
  const upper = any();
  const elsewhere = Random.of(seed, 'air-plan-more');
  const a = Math.floor(elsewhere.next() * count);
  const laminar = [{ a, b: (a + 1) % count, conductance: 4e-11 * elsewhere.next() }];
  const outsideSteps = [
    { atS: 0.6, pa: 60_000 + 40_000 * elsewhere.next() },
    { atS: 1.3, pa: 80_000 + 30_000 * elsewhere.next() },
  ];
  return {
    laminar,
    outsideSteps,
    volumesM3,
    startPa,
    orifices,
    checks,
    diaphragm: { upper, lower: (upper + 1) % count },
    swept: { node: (upper + 2) % count, growth: between(0.5, 1.6) },
  };
}

export interface BuiltPlan {
  readonly net: AirNetwork;
  readonly nodes: readonly number[];
  readonly outside: number;
  readonly parts: readonly (Orifice | CheckValve)[];
}

export function build(plan: NetworkPlan): BuiltPlan {
  const net = new AirNetwork(TEMPERATURE_K);
  const outside = net.boundary('outside', AMBIENT_PA);
  const nodes = plan.volumesM3.map((m3, i) => net.volume(`v${i}`, m3, plan.startPa[i] as number));
  const at = (i: number) => (i === OUTSIDE ? outside : (nodes[i] as number));
  const parts: (Orifice | CheckValve)[] = plan.orifices.map(({ a, b, diameterM }) =>
    net.add(Orifice.bore(at(a), at(b), diameterM)),
  );
  for (const { a, b, diameterM, crackPa } of plan.checks) {
    parts.push(net.add(new CheckValve(at(a), at(b), { diameterM, crackingPa: crackPa })));
  }
  for (const { a, b, conductance } of plan.laminar) {
    net.add(new LaminarLeak(at(a), at(b), conductance));
  }
  net.add(new Diaphragm(at(plan.diaphragm.upper), at(plan.diaphragm.lower), DIAPHRAGM));
  net.compile();
  return { net, nodes, outside, parts };
}
