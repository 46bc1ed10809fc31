/**
 * Open-circuit volts that a flooded lead-acid battery of six cells stands below its full ones, by share of charge, at
 * rest at 25 °C. Source: the state-of-charge table common to battery makers (12.65, 12.45, 12.24, 12.06, 11.89 V at
 * 100, 75, 50, 25 and 0 %), from memory. Between the rows: straight lines.
 */
const BELOW_FULL = [
  [0, 0.76],
  [0.25, 0.59],
  [0.5, 0.41],
  [0.75, 0.2],
  [1, 0],
] as const;

/** Open-circuit volts at a share of charge (0 to 1), for a battery of `fullVolts` when full. */
export function openCircuitVolts(fullVolts: number, charge: number): number {
  for (let i = 1; i < BELOW_FULL.length; i++) {
    const [c0, v0] = BELOW_FULL[i - 1] as readonly [number, number];
    const [c1, v1] = BELOW_FULL[i] as readonly [number, number];
    if (charge <= c1) return fullVolts - v0 - ((v1 - v0) * (Math.max(charge, 0) - c0)) / (c1 - c0);
  }
  return fullVolts;
}

/**
 * Internal resistance at a share of charge: three times the full one when empty, most of the rise near the end, as its
 * acid thins. A shape chosen by us; makers print only "doubles or more".
 */
export function internalOhms(fullOhms: number, charge: number): number {
  const missing = 1 - Math.min(Math.max(charge, 0), 1);
  return fullOhms * (1 + 2 * missing * missing);
}
