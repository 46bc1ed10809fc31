import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { positive } from './electricalLimits.ts';
import { adjacentMode, type PieceMode, readMode } from './pieceMode.ts';

/**
 * Carries nothing until the voltage of `a` over `b` reaches a threshold, then (v − threshold) / slope.
 * A two-sided clamp does the same the other way round. Uses: the 40 V clamp of a driver, the 300 V an opening
 * contact sparks over at. Piecewise linear; no heat, no delay.
 */
export class Clamp extends Part {
  private mode: PieceMode = 0;
  private threshold: number;

  constructor(
    a: number,
    b: number,
    volts: number,
    private readonly slopeOhms: number,
    private readonly sides: 'one-sided' | 'two-sided' = 'one-sided',
  ) {
    super(a, b);
    this.threshold = positive(volts, 'threshold');
    positive(slopeOhms, 'slope resistance');
  }

  /** Threshold, volts. */
  get volts(): number {
    return this.threshold;
  }

  set volts(value: number) {
    if (value === this.threshold) return;
    this.threshold = positive(value, 'threshold');
  }

  override get conducts(): boolean {
    return this.mode !== 0;
  }

  override get injects(): boolean {
    return true;
  }

  override get piecewise(): boolean {
    return true;
  }

  override stamp(stamp: Stamp): void {
    if (this.mode !== 0) stamp.conductance(this.a, this.b, 1 / this.slopeOhms);
  }

  override inject(rhs: Float64Array): void {
    if (this.mode === 0) return;
    const amps = (this.mode * this.threshold) / this.slopeOhms;
    rhs[this.a] = (rhs[this.a] as number) + amps;
    rhs[this.b] = (rhs[this.b] as number) - amps;
  }

  override settle(x: Float64Array): boolean {
    const next = adjacentMode(this.mode, this.voltsAcross(x), this.threshold, this.sides === 'two-sided');
    if (next === this.mode) return false;
    this.mode = next;
    return true;
  }

  override accept(x: Float64Array, _h: number): void {
    this.amps = this.mode === 0 ? 0 : (this.voltsAcross(x) - this.mode * this.threshold) / this.slopeOhms;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.mode, this.threshold);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.mode = readMode(from.next());
    this.threshold = from.next();
  }

  override spice({ id, node }: SpiceNames): string[] {
    const v = `v(${node(this.a)},${node(this.b)})`;
    const other =
      this.sides === 'two-sided'
        ? `(${v}<-${this.threshold}?(${v}+${this.threshold})/${this.slopeOhms}:0)`
        : '0';
    const forward = `(${v}-${this.threshold})/${this.slopeOhms}`;
    return [`B${id} ${node(this.a)} ${node(this.b)} I=${v}>${this.threshold}?${forward}:${other}`];
  }
}
