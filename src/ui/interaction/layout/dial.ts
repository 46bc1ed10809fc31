/** Kilopascals in one inch of mercury (conventional, 0 °C): the dial's two scales and nothing else use it. */
export const KPA_PER_INHG = 3.386389;
/** The gauge's full scale. */
export const FULL_INHG = 30;

/** Where the needle stands as a share of the scale; its stops let it go a little past either end. */
export function needleShare(kPa: number): number {
  return Math.min(1.03, Math.max(-0.03, kPa / KPA_PER_INHG / FULL_INHG));
}
