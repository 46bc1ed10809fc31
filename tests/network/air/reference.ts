import { AMBIENT_PA, DIAPHRAGM, type NetworkPlan, OUTSIDE, TEMPERATURE_K } from './randomNetwork.ts';

/**
 * A second, separately written integrator: explicit fourth-order Runge–Kutta on the masses in very short steps, with the
 * ISO 6358 ellipse as it stands (no laminar blend), nozzle area written out again, straight check valve lift, and
 * diaphragm pressures by bisection. Slow, plain, and sharing no code with the network.
 */
export function integrate(
  plan: NetworkPlan,
  seconds: number,
  samples: number,
  stepsPerSample: number,
): number[][] {
  const RT = 287.05 * TEMPERATURE_K;
  const count = plan.volumesM3.length;
  const { upper, lower } = plan.diaphragm;

  const sizes = (t: number) =>
    plan.volumesM3.map((m3, i) =>
      i === plan.swept.node ? m3 * (1 + (plan.swept.growth - 1) * (t / seconds)) : m3,
    );

  const pressuresOf = (mass: readonly number[], t: number): number[] => {
    const size = sizes(t);
    const p = mass.map((m, i) => (m * RT) / (size[i] as number));
    const full = DIAPHRAGM.areaM2 * DIAPHRAGM.travelM;
    const pull = (shift: number) => {
      const pl = ((mass[lower] as number) * RT) / ((size[lower] as number) + shift);
      const pu = ((mass[upper] as number) * RT) / ((size[upper] as number) - shift);
      const spring = DIAPHRAGM.preloadN + (DIAPHRAGM.rateNPerM * shift) / DIAPHRAGM.areaM2;
      return DIAPHRAGM.areaM2 * (pl - pu) - spring;
    };
    let low = 0;
    let high = full;
    if (pull(0) <= 0) high = 0;
    else if (pull(full) >= 0) low = full;
    while (high - low > 1e-13) {
      const middle = 0.5 * (low + high);
      if (pull(middle) > 0) low = middle;
      else high = middle;
    }
    p[lower] = ((mass[lower] as number) * RT) / ((size[lower] as number) + low);
    p[upper] = ((mass[upper] as number) * RT) / ((size[upper] as number) - low);
    return p;
  };

  const nozzle = (diameterM: number, p1: number, p2: number): number => {
    if (p1 < p2) return -nozzle(diameterM, p2, p1);
    const choked = (0.62 * Math.PI * diameterM ** 2 * p1 * 0.0404146) / (4 * Math.sqrt(TEMPERATURE_K));
    const r = p2 / p1;
    return r <= 0.5 ? choked : choked * Math.sqrt(1 - ((r - 0.5) / 0.5) ** 2);
  };

  const slope = (mass: readonly number[], t: number): number[] => {
    const p = pressuresOf(mass, t);
    const at = (i: number) => (i === OUTSIDE ? AMBIENT_PA : (p[i] as number));
    const rate = new Array<number>(count).fill(0);
    const carry = (a: number, b: number, q: number) => {
      if (a !== OUTSIDE) rate[a] = (rate[a] as number) - q;
      if (b !== OUTSIDE) rate[b] = (rate[b] as number) + q;
    };
    for (const o of plan.orifices) carry(o.a, o.b, nozzle(o.diameterM, at(o.a), at(o.b)));
    for (const c of plan.checks) {
      const lift = Math.min(Math.max((at(c.a) - at(c.b) - c.crackPa) / 50, 0), 1);
      if (lift > 0) carry(c.a, c.b, lift * nozzle(c.diameterM, at(c.a), at(c.b)));
    }
    return rate;
  };

  const along = (m: readonly number[], k: readonly number[], h: number) =>
    m.map((x, i) => x + h * (k[i] as number));
  const startSize = sizes(0);
  let mass = plan.startPa.map((p, i) => {
    let size = startSize[i] as number;
    if (i === upper || i === lower) {
      const dp = (plan.startPa[lower] as number) - (plan.startPa[upper] as number);
      const lift = Math.min(
        Math.max((DIAPHRAGM.areaM2 * dp - DIAPHRAGM.preloadN) / DIAPHRAGM.rateNPerM, 0),
        DIAPHRAGM.travelM,
      );
      size += (i === lower ? 1 : -1) * DIAPHRAGM.areaM2 * lift;
    }
    return (p * size) / RT;
  });
  const table: number[][] = [];
  const h = seconds / (samples * stepsPerSample);
  for (let n = 0; n < samples * stepsPerSample; n++) {
    const t = n * h;
    const k1 = slope(mass, t);
    const k2 = slope(along(mass, k1, h / 2), t + h / 2);
    const k3 = slope(along(mass, k2, h / 2), t + h / 2);
    const k4 = slope(along(mass, k3, h), t + h);
    mass = mass.map(
      (m, i) =>
        m + (h / 6) * ((k1[i] as number) + 2 * (k2[i] as number) + 2 * (k3[i] as number) + (k4[i] as number)),
    );
    if ((n + 1) % stepsPerSample === 0) table.push(pressuresOf(mass, (n + 1) * h));
  }
  return table;
}
