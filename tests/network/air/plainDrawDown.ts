/**
 * The draw-down and hold of the demonstration rig once more, by plain fourth-order Runge–Kutta in fixed steps, sharing no
 * code with the network: nominal sizes, 40 L, 0.20 mm seep, 57 kPa of engine vacuum, solenoid 0.25 s on and 0.25 s off, the
 * switch read at the end of each, as the controller reads it. Every vacuum in Pa below the outside.
 */

const AMBIENT = 101_325;
const T = 293.15;
const RT = 287.05 * T;
const PHASE_S = 0.25;
const TRIP_PA = 2500;

/** ISO 6358 with b = 0.5, straight through zero within 0.1 % of equal pressures; the bore in mm. */
function flow(boreMm: number, p1: number, p2: number): number {
  if (p1 < p2) return -flow(boreMm, p2, p1);
  const choked = (0.62 * Math.PI * (boreMm * 1e-3) ** 2 * p1 * 0.0404146) / (4 * Math.sqrt(T));
  const r = p2 / p1;
  if (r <= 0.5) return choked;
  const x = Math.min(r, 0.999);
  return choked * Math.sqrt(1 - (2 * x - 1) ** 2) * ((1 - r) / (1 - x));
}

/** A check valve that begins to lift at `crack` and is open 50 Pa above it. */
function check(boreMm: number, crack: number, p1: number, p2: number): number {
  const x = Math.min(Math.max((p1 - p2 - crack) / 50, 0), 1);
  return x === 0 ? 0 : x * x * (3 - 2 * x) * flow(boreMm, p1, p2);
}

// Places in the table of masses.
const [CANISTER, AIR, DRIVE, PUMP, DELAY, HOSE, VESSEL, RESERVOIR] = [0, 1, 2, 3, 4, 5, 6, 7];
const SIZES = [12e-6, 10e-6, 26e-6, 4e-6, 8e-6, 60e-6, 40e-3, 0.3e-3];

const AREA = 9e-4;
const TRAVEL = 22e-3;

/** Where the diaphragm (9 cm², 22 mm, 9 N + 0.25 N/mm) stands, m: by Newton from where it stood, kept within its travel. */
function liftOf(massPump: number, massDrive: number, from: number): number {
  let x = from;
  for (let n = 0; n < 30; n++) {
    const pump = 4e-6 + AREA * x;
    const drive = 26e-6 - AREA * x;
    const force = AREA * RT * (massPump / pump - massDrive / drive) - 9 - 250 * x;
    const slope = -AREA * AREA * RT * (massPump / (pump * pump) + massDrive / (drive * drive)) - 250;
    const next = Math.min(Math.max(x - force / slope, 0), TRAVEL);
    if (Math.abs(next - x) < 1e-13) return next;
    x = next;
  }
  return x;
}

let lift = 0;

/** Pressures from masses. */
function pressures(mass: readonly number[], p: number[]): void {
  for (let i = 0; i < 8; i++) p[i] = ((mass[i] as number) * RT) / (SIZES[i] as number);
  lift = liftOf(mass[PUMP] as number, mass[DRIVE] as number, lift);
  p[PUMP] = ((mass[PUMP] as number) * RT) / (4e-6 + AREA * lift);
  p[DRIVE] = ((mass[DRIVE] as number) * RT) / (26e-6 - AREA * lift);
}

export interface PlainDrawDown {
  readonly tripS: number;
  /** Vacuum of the passage as the trip was read, and at the end of the stroke before it, Pa. */
  readonly tripPa: number;
  readonly beforePa: number;
  /** Seconds of hold until the vacuum is below each of the resets asked for. */
  readonly holdS: readonly number[];
}

/** `resetsPa` from the highest vacuum down; the step in s. */
export function plainDrawDown(resetsPa: readonly number[], step: number): PlainDrawDown {
  lift = 0;
  const p = new Array<number>(8).fill(0);
  let on = true;
  let shut = false;
  const rate = (mass: readonly number[], out: number[]): void => {
    pressures(mass, p);
    out.fill(0);
    const carry = (from: number, to: number, q: number): void => {
      out[from] = (out[from] as number) - q;
      if (to >= 0) out[to] = (out[to] as number) + q;
    };
    const at = (i: number): number => p[i] as number;
    carry(AIR, HOSE, flow(8, at(AIR), at(HOSE)));
    carry(HOSE, -1, flow(8, at(HOSE), AMBIENT));
    carry(CANISTER, VESSEL, flow(8, at(CANISTER), at(VESSEL)));
    carry(VESSEL, -1, flow(0.2, at(VESSEL), AMBIENT));
    if (!shut) carry(CANISTER, AIR, flow(7, at(CANISTER), at(AIR)));
    if (on) carry(DRIVE, RESERVOIR, flow(1.6, at(DRIVE), at(RESERVOIR)));
    else carry(DRIVE, AIR, flow(1.6, at(DRIVE), at(AIR)));
    carry(RESERVOIR, -1, check(4, 0, at(RESERVOIR), AMBIENT - 57_000));
    carry(CANISTER, PUMP, check(3, 150, at(CANISTER), at(PUMP)));
    carry(PUMP, AIR, check(3, 150, at(PUMP), at(AIR)));
    carry(DELAY, DRIVE, check(1, 100, at(DELAY), at(DRIVE)));
    carry(DRIVE, DELAY, flow(0.1, at(DRIVE), at(DELAY)));
  };
  const mass = SIZES.map((m3, i) => ((i === RESERVOIR ? AMBIENT - 57_000 : AMBIENT) * m3) / RT);
  const [k1, k2, k3, k4, part] = [0, 1, 2, 3, 4].map(() => new Array<number>(8).fill(0)) as number[][];
  const along = (k: readonly number[], h: number): number[] => {
    for (let i = 0; i < 8; i++) (part as number[])[i] = (mass[i] as number) + h * (k[i] as number);
    return part as number[];
  };
  const advance = (): void => {
    rate(mass, k1 as number[]);
    rate(along(k1 as number[], step / 2), k2 as number[]);
    rate(along(k2 as number[], step / 2), k3 as number[]);
    rate(along(k3 as number[], step), k4 as number[]);
    for (let i = 0; i < 8; i++) {
      const sum =
        (k1?.[i] as number) + 2 * (k2?.[i] as number) + 2 * (k3?.[i] as number) + (k4?.[i] as number);
      mass[i] = (mass[i] as number) + (step / 6) * sum;
    }
    pressures(mass, p);
    if (AMBIENT - (p[DELAY] as number) > 8000) shut = true;
    else if (AMBIENT - (p[DELAY] as number) < 6000) shut = false;
  };
  const vacuum = (): number => AMBIENT - (p[CANISTER] as number);
  const perPhase = Math.round(PHASE_S / step);
  let beforePa = 0;
  let phases = 0;
  for (; ; phases++) {
    on = phases % 2 === 0;
    for (let n = 0; n < perPhase; n++) advance();
    if (vacuum() >= TRIP_PA) break;
    if (!on) beforePa = vacuum();
    if (phases > 240) throw new Error('never tripped');
  }
  const tripPa = vacuum();
  on = true;
  const holdS: number[] = [];
  for (let n = 1; holdS.length < resetsPa.length && n < 60 / step; n++) {
    advance();
    if (n * step > 1 && vacuum() < (resetsPa[holdS.length] as number)) holdS.push(n * step);
  }
  // As the network's own run: a trip read after the solenoid-on half counts with the off half that follows.
  return { tripS: (phases + 1) * PHASE_S, tripPa, beforePa, holdS };
}
