/** Charge of the meter's own battery, 0 to 1, below which it shows its sign. */
const LOW_CHARGE = 0.25;
/** With the last of its charge the meter reads high by this share: its reference sags. Common practice, no source. */
const WORST_SAG = 0.08;

/** What a battery of this charge does to the meter. */
export function batteryIsLow(charge: number): boolean {
  return charge < LOW_CHARGE;
}

/** Nothing works any more: the display is dark. */
export function batteryIsFlat(charge: number): boolean {
  return charge <= 0;
}

/** By what share readings come out high; 0 while the sign is off, rising evenly as the charge falls. */
export function sagOf(charge: number): number {
  if (!batteryIsLow(charge)) return 0;
  return (WORST_SAG * (LOW_CHARGE - Math.max(charge, 0))) / LOW_CHARGE;
}
