import { Resistor } from './Resistor.ts';

/** A small known resistance whose current is read from the voltage across it. */
export class Shunt extends Resistor {
  /** Voltage of `a` over `b`, volts: the burden the ammeter puts into the circuit. */
  get burdenVolts(): number {
    return this.amps * this.ohms;
  }
}
