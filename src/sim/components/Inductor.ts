import type { SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { StoringPart } from '../network/StoringPart.ts';
import { notNegative, positive } from './electricalLimits.ts';

/** Share of the present current, and the least current it is taken of, whose flux is one grain. */
const GRAIN_SHARE = 0.01;
const LEAST_AMPS = 0.1;

/**
 * A coil: flux linkage λ = L·i, dλ/dt = v − R·i (Faraday's law), R its winding resistance (may be 0).
 * A stage of weight w: L₁ i₁ = λ₀ + w (v₁ − R i₁). The state is the flux linkage, so changing L between steps keeps λ:
 * current and energy λ²/2L fall when L rises, and the difference is the work done by the moving plunger.
 */
export class Inductor extends StoringPart {
  private inductance: number;
  private resistance: number;
  /** Inductance at the end of the next step, and in the stage in hand. */
  private inductanceNext: number;
  private inductanceNow: number;

  constructor(a: number, b: number, henries: number, ohms = 0) {
    super(a, b);
    this.inductance = positive(henries, 'inductance');
    this.inductanceNext = henries;
    this.inductanceNow = henries;
    this.resistance = notNegative(ohms, 'winding resistance');
  }

  get henries(): number {
    return this.inductance;
  }

  set henries(value: number) {
    if (value === this.inductance && value === this.inductanceNext) return;
    this.inductance = positive(value, 'inductance');
    this.inductanceNext = value;
    this.inductanceNow = value;
    this.touch();
  }

  /** Lets the inductance go evenly to `henries` over the next step, as when the plunger moves. */
  rampTo(henries: number): void {
    this.inductanceNext = positive(henries, 'inductance');
  }

  get ohms(): number {
    return this.resistance;
  }

  set ohms(value: number) {
    if (value === this.resistance) return;
    this.resistance = notNegative(value, 'winding resistance');
    this.touch();
  }

  /** Flux linkage, weber-turns (volt-seconds). */
  get fluxLinkage(): number {
    return this.stored;
  }

  /** Energy in the field, joules. */
  get joules(): number {
    return (this.stored * this.stored) / (2 * this.inductance);
  }

  /** Starts the coil with a current, amps. */
  setAmps(value: number): void {
    this.amps = value;
    this.stored = this.inductance * value;
  }

  override get branches(): number {
    return 1;
  }

  override toStage(share: number): boolean {
    const henries =
      share === 1 ? this.inductanceNext : this.inductance + share * (this.inductanceNext - this.inductance);
    if (henries === this.inductanceNow) return false;
    this.inductanceNow = henries;
    return true;
  }

  override stamp(stamp: Stamp, weight: number): void {
    stamp.branch(this.branch, this.a, this.b, this.resistance + this.inductanceNow / weight);
  }

  override inject(rhs: Float64Array, weight: number): void {
    rhs[this.branch] = (rhs[this.branch] as number) - this.base / weight;
  }

  override accept(x: Float64Array, _weight: number): void {
    this.amps = x[this.branch] as number;
    this.inductance = this.inductanceNow;
    this.stored = this.inductance * this.amps;
  }

  protected override storedBy(x: Float64Array): number {
    return this.inductanceNow * (x[this.branch] as number);
  }

  protected override get grain(): number {
    return GRAIN_SHARE * this.inductanceNow * Math.max(Math.abs(this.amps), LEAST_AMPS);
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.inductance, this.resistance);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.inductance = from.next();
    this.inductanceNext = this.inductance;
    this.inductanceNow = this.inductance;
    this.resistance = from.next();
  }

  override spice({ id, node }: SpiceNames): string[] {
    const amps = this.stored / this.inductance;
    const inner = this.resistance === 0 ? node(this.b) : `m${id}`;
    const lines = [`L${id} ${node(this.a)} ${inner} ${this.inductance} IC=${amps}`];
    if (this.resistance !== 0) lines.push(`R${id} ${inner} ${node(this.b)} ${this.resistance}`);
    return lines;
  }

  override spiceCurrent({ id }: SpiceNames): string {
    return `l${id}`;
  }
}
