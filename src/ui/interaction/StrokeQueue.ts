/** More strokes than this are not remembered: a hand makes three a second. */
const MOST_WAITING = 8;

/**
 * Strokes asked for faster than a hand can pump: each is made as soon as the handle is home again, so that no press is lost.
 * Strokes wait in real order and are ordinary actions when they are made.
 */
export class StrokeQueue {
  private waiting: number[] = [];

  get length(): number {
    return this.waiting.length;
  }

  /** Asks for one stroke to `depth`. One too many is dropped: the pump is still going as it was asked. */
  ask(depth: number): void {
    if (this.waiting.length < MOST_WAITING) this.waiting.push(depth);
  }

  /** The stroke to make now, or null. */
  next(pump: { readonly moving: boolean }): number | null {
    return pump.moving ? null : (this.waiting.shift() ?? null);
  }

  /** The hand does something else with the pump. */
  clear(): void {
    this.waiting = [];
  }
}
