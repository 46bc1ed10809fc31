/** The handle's travel at which a stroke is heard, and the travel below which the next one may be. */
const HEARD_AT = 0.1;
const ARMED_BELOW = 0.05;

/** Hears the hand pump, once a stroke: for its sound and for the caption of that sound. */
export class StrokeEar {
  private armed = true;

  /** True when a stroke begins to be heard at this travel of the handle. */
  hears(handle: number): boolean {
    if (handle < ARMED_BELOW) this.armed = true;
    if (!this.armed || handle < HEARD_AT) return false;
    this.armed = false;
    return true;
  }
}
