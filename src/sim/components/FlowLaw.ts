import type { FlowSlope } from '../network/AirPart.ts';
import { AIR_GAS_CONSTANT, AIR_HEAT_RATIO } from '../network/airGas.ts';

/** Reference conditions of ISO 8778 used by ISO 6358: 293.15 K, 100 kPa, 65 % humidity. */
export const REFERENCE_TEMPERATURE_K = 293.15;
export const REFERENCE_DENSITY = 1.185;

/** Critical ratio of short sharp restrictions. */
export const DEFAULT_CRITICAL_RATIO = 0.5;
export const DEFAULT_DISCHARGE_COEFFICIENT = 0.62;

/** 1 − p2/p1 below which the flow is blended to zero with a finite slope (laminar range). */
const LAMINAR_SPAN = 0.001;

// Choked mass flow of an ideal nozzle is area·p1·√(γ/R)·(2/(γ+1))^((γ+1)/(2(γ−1)))/√T1; the exponent is 3 for γ = 1.4.
const CHOKED_BASE = 2 / (AIR_HEAT_RATIO + 1);
const CHOKED_FACTOR = Math.sqrt(AIR_HEAT_RATIO / AIR_GAS_CONSTANT) * CHOKED_BASE * CHOKED_BASE * CHOKED_BASE;

/**
 * Sonic conductance C in m³/(s·Pa) of a bore: the same choked flow as an ideal nozzle of area Cd·A in m².
 * Equal to 0.1992·Cd·A in dm³/(s·bar) and mm².
 */
export function sonicConductance(
  areaM2: number,
  dischargeCoefficient = DEFAULT_DISCHARGE_COEFFICIENT,
): number {
  return (
    (dischargeCoefficient * areaM2 * CHOKED_FACTOR) / (REFERENCE_DENSITY * Math.sqrt(REFERENCE_TEMPERATURE_K))
  );
}

/** Area in m² of a round bore, diameter in m. */
export function boreArea(diameterM: number): number {
  return (Math.PI / 4) * diameterM * diameterM;
}

/**
 * Mass flow through a restriction, with its slopes, written to `out`; positive from `pFrom` to `pTo`.
 *
 * Law: ISO 6358 (1989), q = C·p1·ρ0·√(T0/T1)·φ, with φ = 1 for p2/p1 ≤ b (choked) and
 * φ = √(1 − ((p2/p1 − b)/(1 − b))²) above it. Within 0.1 % of equal pressures φ is a parabola through zero that meets the
 * ellipse with its value and slope, so that the slope stays finite (laminar range).
 * Units: C in m³/(s·Pa), pressures absolute in Pa, above zero, temperature in K, q in kg/s.
 */
export function restrictionFlow(
  conductance: number,
  criticalRatio: number,
  pFrom: number,
  pTo: number,
  temperatureK: number,
  out: FlowSlope,
): void {
  const curve = curveOf(criticalRatio);
  const forward = pFrom >= pTo;
  const p1 = forward ? pFrom : pTo;
  const r = (forward ? pTo : pFrom) / p1;
  const scale = conductance * densityFactor(temperatureK);
  let phi = 1;
  let slope = 0; // dφ/dr
  if (r > 1 - LAMINAR_SPAN) {
    const s = 1 - r;
    phi = s * (curve.first - curve.second * s);
    slope = 2 * curve.second * s - curve.first;
  } else if (r > criticalRatio) {
    const z = (r - criticalRatio) * curve.inverse;
    phi = Math.sqrt(1 - z * z);
    slope = (-z * curve.inverse) / phi;
  }
  const dp1 = scale * (phi - r * slope);
  const dp2 = scale * slope;
  if (forward) {
    out.q = scale * p1 * phi;
    out.dFrom = dp1;
    out.dTo = dp2;
  } else {
    out.q = -scale * p1 * phi;
    out.dFrom = -dp2;
    out.dTo = -dp1;
  }
}

/** What a critical ratio b alone decides: 1/(1 − b), and the laminar parabola s·(first − second·s) of s = 1 − p2/p1. */
interface FlowCurve {
  readonly criticalRatio: number;
  readonly inverse: number;
  readonly first: number;
  readonly second: number;
}

function newCurve(b: number): FlowCurve {
  const inverse = 1 / (1 - b);
  const z = (1 - LAMINAR_SPAN - b) * inverse;
  const phi = Math.sqrt(1 - z * z);
  const fall = (z * inverse) / phi;
  return {
    criticalRatio: b,
    inverse,
    first: (2 * phi) / LAMINAR_SPAN - fall,
    second: (phi / LAMINAR_SPAN - fall) / LAMINAR_SPAN,
  };
}

// Kept from call to call, since nearly all calls ask for the same: what is kept is a function of its key alone.
let lastCurve = newCurve(DEFAULT_CRITICAL_RATIO);
let lastTemperatureK = REFERENCE_TEMPERATURE_K;
let lastFactor = REFERENCE_DENSITY;

function curveOf(criticalRatio: number): FlowCurve {
  if (lastCurve.criticalRatio !== criticalRatio) lastCurve = newCurve(criticalRatio);
  return lastCurve;
}

/** ρ0·√(T0/T), kg/m³. */
function densityFactor(temperatureK: number): number {
  if (lastTemperatureK !== temperatureK) {
    lastTemperatureK = temperatureK;
    lastFactor = REFERENCE_DENSITY * Math.sqrt(REFERENCE_TEMPERATURE_K / temperatureK);
  }
  return lastFactor;
}
