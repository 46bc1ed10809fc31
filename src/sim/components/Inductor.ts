import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { notNegative, positive } from './electricalLimits.ts';

/**
 * A coil: flux linkage λ = L·i, dλ/dt = v − R·i (Faraday's law), R its winding resistance (may be 0).
 * Backward Euler: L₁ i₁ = λ₀ + h (v₁ − R i₁). The state is the flux linkage, so changing L between steps keeps λ:
 * current and energy λ²/2L fall when L rises, and the difference is the work done by the moving plunger.
 */
export class Inductor extends Part {
  private inductance: number;
  private resistance: number;
  private linkage = 0;

  constructor(a: number, b: number, henries: number, ohms = 0) {
    super(a, b);
    this.inductance = positive(henries, 'inductance');
    this.resistance = notNegative(ohms, 'winding resistance');
  }

  get henries(): number {
    return this.inductance;
  }

  set henries(value: number) {
    if (value === this.inductance) return;
    this.inductance = positive(value, 'inductance');
    this.touch();
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
    return this.linkage;
  }

  /** Energy in the field, joules. */
  get joules(): number {
    return (this.linkage * this.linkage) / (2 * this.inductance);
  }

  /** Starts the coil with a current, amps. */
  setAmps(value: number): void {
    this.amps = value;
    this.linkage = this.inductance * value;
  }

  override get branches(): number {
    return 1;
  }

  override get injects(): boolean {
    return true;
  }

  override stamp(stamp: Stamp, h: number): void {
    stamp.branch(this.branch, this.a, this.b, this.resistance + this.inductance / h);
  }

  override inject(rhs: Float64Array, h: number): void {
    rhs[this.branch] = (rhs[this.branch] as number) - this.linkage / h;
  }

  override accept(x: Float64Array, _h: number): void {
    this.amps = x[this.branch] as number;
    this.linkage = this.inductance * this.amps;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.linkage, this.inductance, this.resistance);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.linkage = from.next();
    this.inductance = from.next();
    this.resistance = from.next();
  }

  override spice({ id, node }: SpiceNames): string[] {
    const amps = this.linkage / this.inductance;
    const inner = this.resistance === 0 ? node(this.b) : `m${id}`;
    const lines = [`L${id} ${node(this.a)} ${inner} ${this.inductance} IC=${amps}`];
    if (this.resistance !== 0) lines.push(`R${id} ${inner} ${node(this.b)} ${this.resistance}`);
    return lines;
  }

  override spiceCurrent({ id }: SpiceNames): string {
    return `l${id}`;
  }
}
