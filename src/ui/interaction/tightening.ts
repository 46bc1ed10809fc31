/** A press this long is no longer a press, and the ring on the clamp begins to fill. */
export const HOLD_SECONDS = 0.35;
/** From then on so long until the clamp is over-tight: time enough to read the warning and let go. */
const FILLS_SECONDS = 1.6;

/** How far the ring on a held clamp has filled, 0 to 1; at 1 the barb cracks. */
export function tighteningShare(heldSeconds: number): number {
  return Math.min(1, Math.max(0, (heldSeconds - HOLD_SECONDS) / FILLS_SECONDS));
}
