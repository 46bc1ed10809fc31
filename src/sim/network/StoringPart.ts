import { Part } from './Part.ts';
import type { StateReader } from './StateReader.ts';

/**
 * A part that stores something which only time can change: flux linkage in a coil, charge in a capacitor.
 * The circuit moves it by two implicit stages a step (see `Circuit`). Each stage is one backward Euler step of length
 * `weight` from `base`. For these parts the `h` of `stamp`, `inject` and `accept` is that weight.
 */
export abstract class StoringPart extends Part {
  /** What is stored, as last accepted. */
  protected stored = 0;
  /** What the stage in hand starts from. */
  protected base = 0;
  /** What the first stage found, and the second. */
  private first = 0;
  private second = 0;

  override get injects(): boolean {
    return true;
  }

  /** What a trial solution would have stored. */
  protected abstract storedBy(x: Float64Array): number;

  /** How much of the stored quantity counts as one in `roughness`. */
  protected abstract get grain(): number;

  /** Moves values that change evenly over a step to where they stand at a share of it; true when one has changed. */
  toStage(_share: number): boolean {
    return false;
  }

  /** The next stage starts from the accepted state. */
  startAfresh(): void {
    this.base = this.stored;
  }

  /** The first stage is solved: the second starts `reach` times as far along as it came. */
  lookAhead(x: Float64Array, reach: number): void {
    this.first = this.storedBy(x);
    this.base = this.stored + reach * (this.first - this.stored);
  }

  /**
   * Writes how far the two stages disagree about the rate of change, over the weight of a stage, as if it were the state
   * to start from. One more solve with the same factors then gives it without what is too fast to matter.
   */
  injectDisagreement(x: Float64Array, rhs: Float64Array, weight: number): void {
    const { base } = this;
    this.second = this.storedBy(x);
    this.base = this.disagreement(x);
    this.inject(rhs, weight);
    this.base = base;
  }

  /** True when the stages disagree as they do about something that is over long before the step is: see `Circuit`. */
  leaps(_x: Float64Array): boolean {
    return false;
  }

  /** How far the stages disagree, in what is stored. */
  protected disagreement(x: Float64Array): number {
    return this.storedBy(x) - this.base - (this.first - this.stored);
  }

  /** A disagreement in grains. It grows with the square of the step where the part moves smoothly. */
  roughness(disagreement: Float64Array): number {
    return Math.abs(this.storedBy(disagreement)) / this.grain;
  }

  /** How far another way to the step's end comes out from where the second stage did, in grains. */
  awayFromSecond(x: Float64Array): number {
    return Math.abs(this.storedBy(x) - this.second) / this.grain;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.stored);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.stored = from.next();
    this.base = this.stored;
  }
}
