import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { positive } from './electricalLimits.ts';

/** A capacitor: charge q = C·v, i = dq/dt. Backward Euler: i₁ = (C v₁ − q₀) / h. The state is the charge. */
export class Capacitor extends Part {
  private charge = 0;
  private capacitance: number;

  constructor(a: number, b: number, farads: number) {
    super(a, b);
    this.capacitance = positive(farads, 'capacitance');
  }

  get farads(): number {
    return this.capacitance;
  }

  /** Voltage of `a` over `b` that the charge stands for, volts. */
  get volts(): number {
    return this.charge / this.capacitance;
  }

  /** Starts the capacitor at a voltage. */
  setVolts(value: number): void {
    this.charge = this.capacitance * value;
  }

  override get conducts(): boolean {
    return false;
  }

  override get injects(): boolean {
    return true;
  }

  override stamp(stamp: Stamp, h: number): void {
    stamp.conductance(this.a, this.b, this.capacitance / h);
  }

  override inject(rhs: Float64Array, h: number): void {
    const amps = this.charge / h;
    rhs[this.a] = (rhs[this.a] as number) + amps;
    rhs[this.b] = (rhs[this.b] as number) - amps;
  }

  override accept(x: Float64Array, h: number): void {
    const charge = this.capacitance * this.voltsAcross(x);
    this.amps = (charge - this.charge) / h;
    this.charge = charge;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.charge);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.charge = from.next();
  }

  override spice({ id, node }: SpiceNames): string[] {
    return [`C${id} ${node(this.a)} ${node(this.b)} ${this.capacitance} IC=${this.volts}`];
  }
}
