import type { SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import { StoringPart } from '../network/StoringPart.ts';
import { positive } from './electricalLimits.ts';

/** Share of the present voltage, and the least voltage it is taken of, whose charge is one grain. */
const GRAIN_SHARE = 0.05;
const LEAST_VOLTS = 1;
/** A disagreement of more, volts, is a leap. */
const LEAP_VOLTS = 0.25;

/** A capacitor: charge q = C·v, i = dq/dt. A stage of weight w: i₁ = (C v₁ − q₀) / w. The state is the charge. */
export class Capacitor extends StoringPart {
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
    return this.stored / this.capacitance;
  }

  /** Starts the capacitor at a voltage. */
  setVolts(value: number): void {
    this.stored = this.capacitance * value;
  }

  override get conducts(): boolean {
    return false;
  }

  override stamp(stamp: Stamp, weight: number): void {
    stamp.conductance(this.a, this.b, this.capacitance / weight);
  }

  override inject(rhs: Float64Array, weight: number): void {
    const amps = this.base / weight;
    rhs[this.a] = (rhs[this.a] as number) + amps;
    rhs[this.b] = (rhs[this.b] as number) - amps;
  }

  override accept(x: Float64Array, weight: number): void {
    const charge = this.storedBy(x);
    this.amps = (charge - this.base) / weight;
    this.stored = charge;
  }

  override leaps(x: Float64Array): boolean {
    return Math.abs(this.disagreement(x)) > LEAP_VOLTS * this.capacitance;
  }

  /** A leap is no sign of a wrong way: the charge is where the voltage puts it. */
  override awayFromSecond(): number {
    return 0;
  }

  protected override storedBy(x: Float64Array): number {
    return this.capacitance * this.voltsAcross(x);
  }

  protected override get grain(): number {
    return GRAIN_SHARE * this.capacitance * Math.max(Math.abs(this.volts), LEAST_VOLTS);
  }

  override spice({ id, node }: SpiceNames): string[] {
    return [`C${id} ${node(this.a)} ${node(this.b)} ${this.capacitance} IC=${this.volts}`];
  }
}
