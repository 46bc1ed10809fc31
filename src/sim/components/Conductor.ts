import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import { OPEN_OHMS } from './electricalLimits.ts';

/**
 * Anything that obeys Ohm's law, i = v / R, with a resistance that only changes by a setting.
 * Common base of Resistor, Contact, Wire, Shunt, Fuse and ProbeContact. Each sets `siemens` when its setting changes.
 */
export abstract class Conductor extends Part {
  private g = 0;
  /** Current when it was last asked for, and at which solution. */
  private known = 0;
  private knownAt = 0;

  /** Worked out when asked for, which for most parts of a bench is seldom. */
  override get amps(): number {
    const { host } = this;
    if (host === null || this.knownAt === host.accepted) return this.known;
    this.known = this.voltsAcross(host.solution) * this.g;
    this.knownAt = host.accepted;
    return this.known;
  }

  override set amps(value: number) {
    this.known = value;
    this.knownAt = this.host?.accepted ?? 0;
  }

  /** Conductance as it now stands, siemens; 0 carries nothing. */
  protected get siemens(): number {
    return this.g;
  }

  protected set siemens(value: number) {
    if (value === this.g) return;
    this.holdAmps();
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

  /** Before conductance or place change: the current stays what it was until the next solution. */
  protected holdAmps(): void {
    const { amps } = this;
    this.amps = amps;
  }

  override spice({ id, node }: SpiceNames): string[] {
    return this.g === 0 ? [] : [`R${id} ${node(this.a)} ${node(this.b)} ${1 / this.g}`];
  }
}
