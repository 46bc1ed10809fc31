/** The darkest tint stands for this much vacuum, kPa: what an engine draws at idle. */
const DARKEST_KPA = 60;
/** Pressure above the room is never more than smoke needs, kPa. */
const MOST_PRESSURE_KPA = 4;

/**
 * Tint of air by its vacuum, kPa below the room, as a CSS colour. The share of blue goes by the square root, so that the
 * switch's small vacuum shows beside the engine's.
 */
export function pressureTint(kPa: number): string {
  if (kPa < 0) return mix('--kg-lamp', Math.min(1, -kPa / MOST_PRESSURE_KPA) * 36);
  return mix('--kg-vacuum-tint', Math.sqrt(Math.min(1, kPa / DARKEST_KPA)) * 100);
}

/** Steps of the legend, kPa below the room. */
export const LEGEND_KPA: readonly number[] = [0, 2.5, 10, 30, 60];

function mix(token: string, percent: number): string {
  return `color-mix(in srgb, var(${token}) ${percent.toFixed(0)}%, var(--kg-cream))`;
}
