import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { finite, notNegative } from './electricalLimits.ts';

/**
 * A source with a resistance in series: v(a) − v(b) = E + R·i, i into `a`. So `amps` is negative while it delivers
 * current; `deliveredAmps` is the same current the other way round.
 */
export class VoltageSource extends Part {
  private emf: number;
  private resistance: number;

  constructor(a: number, b: number, volts: number, ohms = 0) {
    super(a, b);
    this.emf = finite(volts, 'voltage');
    this.resistance = notNegative(ohms, 'series resistance');
  }

  /** Open-circuit voltage, volts. */
  get volts(): number {
    return this.emf;
  }

  set volts(value: number) {
    // Only the right-hand side holds it, and that is built for every solve.
    this.emf = finite(value, 'voltage');
  }

  get ohms(): number {
    return this.resistance;
  }

  set ohms(value: number) {
    if (value === this.resistance) return;
    this.resistance = notNegative(value, 'series resistance');
    this.touch();
  }

  /** Current the source gives out at `a`, amps. */
  get deliveredAmps(): number {
    return -this.amps;
  }

  override get branches(): number {
    return 1;
  }

  override get injects(): boolean {
    return true;
  }

  override stamp(stamp: Stamp): void {
    stamp.branch(this.branch, this.a, this.b, this.resistance);
  }

  override inject(rhs: Float64Array): void {
    rhs[this.branch] = (rhs[this.branch] as number) + this.emf;
  }

  override accept(x: Float64Array, _h: number): void {
    this.amps = x[this.branch] as number;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.emf, this.resistance);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.emf = from.next();
    this.resistance = from.next();
  }

  override spice({ id, node }: SpiceNames): string[] {
    const inner = this.resistance === 0 ? node(this.a) : `e${id}`;
    const lines = [`V${id} ${inner} ${node(this.b)} DC ${this.emf}`];
    if (this.resistance !== 0) lines.push(`R${id} ${node(this.a)} ${inner} ${this.resistance}`);
    return lines;
  }

  override spiceCurrent({ id }: SpiceNames): string {
    return `v${id}`;
  }
}
