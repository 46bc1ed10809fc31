/** Frames for which the bench must have stood: it comes up layer by layer, and that comes first. */
const STOOD_FRAMES = 60;

/** Once the bench has stood for a moment, fetches what it may be asked for next. */
export class AheadOfUse {
  private frames = 0;

  constructor(private readonly fetch: () => void) {}

  /** A frame went by, with the bench standing or not. */
  frame(stands: boolean): void {
    if (!stands || this.frames >= STOOD_FRAMES) return;
    this.frames += 1;
    if (this.frames === STOOD_FRAMES) this.fetch();
  }
}
