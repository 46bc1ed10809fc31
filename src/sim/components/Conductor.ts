import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import { OPEN_OHMS } from './electricalLimits.ts';

/**
 * Anything that obeys Ohm's law, i = v / R, with a resistance that only changes by a setting.
 * Common base of Resistor, Contact, Wire, Shunt, Fuse and ProbeContact. Each sets `siemens` when its setting changes.
 */
export abstract class Conductor extends Part {
  private g = 0;

  /** Conductance as it now stands, siemens; 0 carries nothing. */
  protected get siemens(): number {
    return this.g;
  }

  protected set siemens(value: number) {
    if (value === this.g) return;
    this.g = value;
    this.touch();
  }

  /** A break of 1 GΩ does not count as a path. */
  override get conducts(): boolean {
    return this.g * OPEN_OHMS > 1.5;
  }

  override stamp(stamp: Stamp): void {
    stamp.conductance(this.a, this.b, this.g);
  }

  override accept(x: Float64Array, _h: number): void {
    this.amps = this.voltsAcross(x) * this.g;
  }

  override spice({ id, node }: SpiceNames): string[] {
    return this.g === 0 ? [] : [`R${id} ${node(this.a)} ${node(this.b)} ${1 / this.g}`];
  }
}
