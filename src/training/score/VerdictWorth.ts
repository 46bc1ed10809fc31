/** A verdict as the truth and the evidence leave it: right or not, its mode right or not, and how far it is carried, 0 to 1. */
export interface VerdictWorth {
  readonly right: boolean;
  readonly modeRight: boolean;
  readonly weight: number;
}
