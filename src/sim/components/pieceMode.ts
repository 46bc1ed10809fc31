/** Which straight piece of a bent characteristic a part works on: past its knee, between the knees, past the other knee. */
export type PieceMode = -1 | 0 | 1;

/** How far past a knee a voltage must be to leave the middle piece, volts: rounding must not make it chatter. */
const MARGIN_VOLTS = 1e-11;
/** How far to come back to it: so little that the leak of a floating node does it, and no charge is held for ever. */
const BACK_VOLTS = 1e-12;

/**
 * The piece to try next for a trial voltage. It moves to a neighbouring piece only: a trial on the wrong piece may
 * lie far beyond the other end, and jumping there would run in circles.
 */
export function adjacentMode(mode: PieceMode, volts: number, knee: number, bothWays: boolean): PieceMode {
  if (mode === 1) return volts < knee - BACK_VOLTS ? 0 : 1;
  if (mode === -1) return volts > BACK_VOLTS - knee ? 0 : -1;
  if (volts > knee + MARGIN_VOLTS) return 1;
  return bothWays && volts < -knee - MARGIN_VOLTS ? -1 : 0;
}

/** A saved number back as a piece. */
export function readMode(saved: number): PieceMode {
  return saved > 0 ? 1 : saved < 0 ? -1 : 0;
}
