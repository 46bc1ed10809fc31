import type { StateReader } from '../network/StateReader.ts';
import { Conductor } from './Conductor.ts';
import { positive } from './electricalLimits.ts';

/** A resistor: v = R·i (Ohm's law), R above zero, settable. */
export class Resistor extends Conductor {
  private resistance: number;

  constructor(a: number, b: number, ohms: number) {
    super(a, b);
    this.resistance = positive(ohms, 'resistance');
    this.siemens = 1 / ohms;
  }

  get ohms(): number {
    return this.resistance;
  }

  set ohms(value: number) {
    this.resistance = positive(value, 'resistance');
    this.siemens = 1 / value;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.resistance);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.ohms = from.next();
  }
}
