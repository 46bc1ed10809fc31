import { createRequire } from 'node:module';
import { AMBIENT_PA, DIAPHRAGM, type NetworkPlan, OUTSIDE, TEMPERATURE_K } from './randomNetwork.ts';

/** What is used of the package: Hairer and Wanner's ODEX, an explicit extrapolation method of varying high order. */
interface OdexSolver {
  relativeTolerance: number;
  absoluteTolerance: number;
  maxSteps: number;
  solve(
    slope: (t: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[]; readonly outcome: number };
}
const { Solver } = createRequire(import.meta.url)('odex') as { Solver: new (size: number) => OdexSolver };
const CONVERGED = 0;

const RT = 287.05 * TEMPERATURE_K;
/** Masses are integrated in milligrams, so that they are numbers near one. */
const KG = 1e-6;
const LAMINAR_FROM = 0.999;

/** Share of choked flow by ISO 6358 with b = 0.5; above 0.999 a parabola through zero of the ellipse's value and slope there. */
function share(r: number): number {
  const ellipse = (ratio: number): number => Math.sqrt(1 - (2 * ratio - 1) ** 2);
  if (r <= 0.5) return 1;
  if (r <= LAMINAR_FROM) return ellipse(r);
  const value = ellipse(LAMINAR_FROM);
  const fall = (2 * (2 * LAMINAR_FROM - 1)) / value; // −dφ/dr there
  const edge = 1 - LAMINAR_FROM;
  // φ = αs + βs², with s = 1 − r: αe + βe² = value, α + 2βe = fall
  const beta = (fall * edge - value) / edge ** 2;
  const alpha = fall - 2 * beta * edge;
  return alpha * (1 - r) + beta * (1 - r) ** 2;
}

function nozzle(diameterM: number, p1: number, p2: number): number {
  if (p1 < p2) return -nozzle(diameterM, p2, p1);
  return (
    ((0.62 * Math.PI * diameterM ** 2 * p1 * 0.0404146) / (4 * Math.sqrt(TEMPERATURE_K))) * share(p2 / p1)
  );
}

/** Lift of a check valve that opens over 50 Pa, smoothly at both ends. */
function lift(over: number): number {
  const x = Math.min(Math.max(over / 50, 0), 1);
  return x * x * (3 - 2 * x);
}

/** Sizes of the volumes at a time, m³, before the diaphragm. */
function sizesAt(plan: NetworkPlan, t: number, seconds: number): number[] {
  const grown = 1 + (plan.swept.growth - 1) * (t / seconds);
  return plan.volumesM3.map((m3, i) => (i === plan.swept.node ? m3 * grown : m3));
}

/** Pressures from masses in kg; the diaphragm's place by halving. */
function pressuresOf(plan: NetworkPlan, mass: readonly number[], size: readonly number[]): number[] {
  const { upper, lower } = plan.diaphragm;
  const of = (i: number, extra: number): number => ((mass[i] as number) * RT) / ((size[i] as number) + extra);
  const pull = (shift: number): number => {
    const spring = DIAPHRAGM.preloadN + (DIAPHRAGM.rateNPerM * shift) / DIAPHRAGM.areaM2;
    return DIAPHRAGM.areaM2 * (of(lower, shift) - of(upper, -shift)) - spring;
  };
  let low = 0;
  let high = DIAPHRAGM.areaM2 * DIAPHRAGM.travelM;
  if (pull(0) <= 0) high = 0;
  else if (pull(high) >= 0) low = high;
  for (let halving = 0; halving < 60 && low < high; halving++) {
    const middle = 0.5 * (low + high);
    if (pull(middle) > 0) low = middle;
    else high = middle;
  }
  return mass.map((_, i) => of(i, i === lower ? low : i === upper ? -low : 0));
}

function startMasses(plan: NetworkPlan, size: readonly number[]): number[] {
  const { upper, lower } = plan.diaphragm;
  const dp = (plan.startPa[lower] as number) - (plan.startPa[upper] as number);
  const x = (DIAPHRAGM.areaM2 * dp - DIAPHRAGM.preloadN) / DIAPHRAGM.rateNPerM;
  const shift = DIAPHRAGM.areaM2 * Math.min(Math.max(x, 0), DIAPHRAGM.travelM);
  return plan.startPa.map((p, i) => {
    const extra = i === lower ? shift : i === upper ? -shift : 0;
    return (p * ((size[i] as number) + extra)) / RT;
  });
}

/**
 * A second, separately written account of the same network: masses integrated by ODEX to a tolerance of 1e-9, the laws
 * written out again, the diaphragm by halving. It shares no code with the network. Gives the pressures at each sample.
 */
export function integrate(plan: NetworkPlan, seconds: number, samples: number): number[][] {
  const count = plan.volumesM3.length;
  const solver = new Solver(count);
  solver.relativeTolerance = 1e-9;
  solver.absoluteTolerance = 1e-9;
  solver.maxSteps = 200_000;
  let outside = AMBIENT_PA;

  const slope = (t: number, milligrams: number[]): number[] => {
    const p = pressuresOf(
      plan,
      milligrams.map((m) => m * KG),
      sizesAt(plan, t, seconds),
    );
    const at = (i: number): number => (i === OUTSIDE ? outside : (p[i] as number));
    const rate = new Array<number>(count).fill(0);
    const carry = (a: number, b: number, q: number): void => {
      if (a !== OUTSIDE) rate[a] = (rate[a] as number) - q / KG;
      if (b !== OUTSIDE) rate[b] = (rate[b] as number) + q / KG;
    };
    for (const o of plan.orifices) carry(o.a, o.b, nozzle(o.diameterM, at(o.a), at(o.b)));
    for (const l of plan.laminar) carry(l.a, l.b, l.conductance * (at(l.a) - at(l.b)));
    for (const c of plan.checks) {
      carry(c.a, c.b, lift(at(c.a) - at(c.b) - c.crackPa) * nozzle(c.diameterM, at(c.a), at(c.b)));
    }
    return rate;
  };

  const stops = Array.from({ length: samples }, (_, n) => ((n + 1) * seconds) / samples);
  const changes = plan.outsideSteps.filter(({ atS }) => atS < seconds);
  let mass = startMasses(plan, sizesAt(plan, 0, seconds)).map((kg) => kg / KG);
  let now = 0;
  const run = (to: number): void => {
    if (to <= now) return;
    const result = solver.solve(slope, now, mass, to);
    if (result.outcome !== CONVERGED) throw new Error(`reference stopped before ${to} s`);
    mass = result.y;
    now = to;
  };
  return stops.map((stop) => {
    for (const { atS, pa } of changes) {
      if (atS < now || atS >= stop) continue;
      run(atS);
      outside = pa;
    }
    run(stop);
    return pressuresOf(
      plan,
      mass.map((m) => m * KG),
      sizesAt(plan, stop, seconds),
    );
  });
}
