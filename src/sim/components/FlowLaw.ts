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
  const forward = pFrom >= pTo;
  const p1 = forward ? pFrom : pTo;
  const r = (forward ? pTo : pFrom) / p1;
  const scale = conductance * REFERENCE_DENSITY * Math.sqrt(REFERENCE_TEMPERATURE_K / temperatureK);
  let phi = 1;
  let slope = 0; // dφ/dr
  if (r > 1 - LAMINAR_SPAN) {
    const edgePhi = ellipse(1 - LAMINAR_SPAN, criticalRatio);
    const edgeFall = ellipseFall(1 - LAMINAR_SPAN, criticalRatio, edgePhi);
    const s = 1 - r;
    const first = (2 * edgePhi) / LAMINAR_SPAN - edgeFall;
    const second = (edgePhi / LAMINAR_SPAN - edgeFall) / LAMINAR_SPAN;
    phi = s * (first - second * s);
    slope = 2 * second * s - first;
  } else if (r > criticalRatio) {
    phi = ellipse(r, criticalRatio);
    slope = -ellipseFall(r, criticalRatio, phi);
  }
  const dp1 = scale * (phi - r * slope);
  const dp2 = scale * slope;
  out.q = forward ? scale * p1 * phi : -scale * p1 * phi;
  out.dFrom = forward ? dp1 : -dp2;
  out.dTo = forward ? dp2 : -dp1;
}

function ellipse(r: number, b: number): number {
  const z = (r - b) / (1 - b);
  return Math.sqrt(1 - z * z);
}

/** −dφ/dr of the ellipse. */
function ellipseFall(r: number, b: number, phi: number): number {
  return (r - b) / ((1 - b) * (1 - b) * phi);
}
