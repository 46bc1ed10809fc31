import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { finite, positive } from './electricalLimits.ts';

/** What the meter puts between its two jacks. `test` is the source of the ohms, continuity and diode functions. */
export type MeterInputMode =
  | { readonly kind: 'open' }
  | { readonly kind: 'voltmeter'; readonly ohms: number }
  | { readonly kind: 'test'; readonly volts: number; readonly ohms: number };

/** Input of an ordinary digital voltmeter. Source: University Physics 2 (OpenStax), section 10.4, "on the order of" 10 MΩ. */
export const VOLTMETER: MeterInputMode = { kind: 'voltmeter', ohms: 1e7 };

/**
 * The input of a meter between its jacks `a` (red) and `b` (black): a resistance, or for ohms a test voltage E behind
 * a resistance R that depends on the range: i into `a` = (v − E) / R. The unknown between the jacks is then
 * v / (−i) = v R / (E − v) ohms.
 */
export class MeterInput extends Part {
  private setting: MeterInputMode = VOLTMETER;
  private siemens = 1e-7;
  private emf = 0;
  private reading = 0;

  constructor(a: number, b: number, mode: MeterInputMode = VOLTMETER) {
    super(a, b);
    this.mode = mode;
  }

  get mode(): MeterInputMode {
    return this.setting;
  }

  set mode(value: MeterInputMode) {
    const siemens = value.kind === 'open' ? 0 : 1 / positive(value.ohms, 'input resistance');
    this.setting = value;
    this.emf = value.kind === 'test' ? finite(value.volts, 'test voltage') : 0;
    if (siemens === this.siemens) return;
    this.siemens = siemens;
    this.touch();
  }

  /** Voltage of red over black at the jacks, volts. */
  get volts(): number {
    return this.reading;
  }

  /** Current the test source sends out of the red jack, amps (0 volts of source: the negative of `amps`). */
  get testAmps(): number {
    return -this.amps;
  }

  override get conducts(): boolean {
    return this.siemens > 0;
  }

  override get injects(): boolean {
    return true;
  }

  override stamp(stamp: Stamp): void {
    stamp.conductance(this.a, this.b, this.siemens);
  }

  override inject(rhs: Float64Array): void {
    const amps = this.emf * this.siemens;
    rhs[this.a] = (rhs[this.a] as number) + amps;
    rhs[this.b] = (rhs[this.b] as number) - amps;
  }

  override accept(x: Float64Array, _h: number): void {
    this.reading = this.voltsAcross(x);
    this.amps = (this.reading - this.emf) * this.siemens;
  }

  override save(out: number[]): void {
    super.save(out);
    const { setting } = this;
    out.push(this.reading, setting.kind === 'open' ? 0 : setting.kind === 'voltmeter' ? 1 : 2);
    out.push(setting.kind === 'open' ? 0 : setting.ohms, setting.kind === 'test' ? setting.volts : 0);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.reading = from.next();
    const kind = from.next();
    const ohms = from.next();
    const volts = from.next();
    if (kind === 0) this.mode = { kind: 'open' };
    else if (kind === 1) this.mode = { kind: 'voltmeter', ohms };
    else this.mode = { kind: 'test', volts, ohms };
  }

  override spice({ id, node }: SpiceNames): string[] {
    if (this.siemens === 0) return [];
    if (this.emf === 0) return [`R${id} ${node(this.a)} ${node(this.b)} ${1 / this.siemens}`];
    return [
      `V${id} e${id} ${node(this.b)} DC ${this.emf}`,
      `R${id} ${node(this.a)} e${id} ${1 / this.siemens}`,
    ];
  }
}
