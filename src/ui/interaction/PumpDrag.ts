import { clamp } from '../../base/maths.ts';

/** Handle positions are whole 64ths, so that a record stays short and exact. */
export const HANDLE_STEPS = 64;
const SHORTEST_GAP_MS = 1000 / 30;

export function quantiseHandle(position: number): number {
  return Math.round(clamp(position, 0, 1) * HANDLE_STEPS) / HANDLE_STEPS;
}

/**
 * A drag of the pump handle: pointer travel in bench units becomes handle positions, at most thirty a second. The last position is
 * never lost: `end` gives it.
 */
export class PumpDrag {
  private sent: number;
  private sentAtMs = Number.NEGATIVE_INFINITY;
  private wanted: number;

  /** `travelUnits` is the drawn length of the whole stroke. */
  constructor(
    private readonly start: number,
    private readonly startX: number,
    private readonly travelUnits: number,
  ) {
    this.sent = quantiseHandle(start);
    this.wanted = this.sent;
  }

  /** The position to send now, or null when it is too soon or the same. */
  move(x: number, nowMs: number): number | null {
    this.wanted = quantiseHandle(this.start + (x - this.startX) / this.travelUnits);
    return this.catchUp(nowMs);
  }

  /** The last position under a pointer that stands still, when it has not been sent yet. */
  catchUp(nowMs: number): number | null {
    return nowMs - this.sentAtMs < SHORTEST_GAP_MS ? null : this.flush(nowMs);
  }

  /** The last position, when it has not been sent yet. */
  end(nowMs: number): number | null {
    return this.flush(nowMs);
  }

  private flush(nowMs: number): number | null {
    if (this.wanted === this.sent) return null;
    this.sent = this.wanted;
    this.sentAtMs = nowMs;
    return this.sent;
  }
}
