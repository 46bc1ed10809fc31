import { assert } from '../../base/assert.ts';
import type { StateReader } from '../network/StateReader.ts';
import { Conductor } from './Conductor.ts';
import { finite, notNegative, OPEN_OHMS, positive } from './electricalLimits.ts';

/**
 * Largest resistance of bare copper road-vehicle cable at 20 °C, ohms a metre, by cross-section in mm².
 * Source: ISO 6722-1:2011 conductor table, from memory (the paid table was not seen; older lists give 0.0520 at 0.35 mm²).
 */
const OHMS_PER_METRE = [
  [0.35, 0.0544],
  [0.5, 0.0371],
  [0.75, 0.0247],
  [1, 0.0185],
  [1.5, 0.0127],
  [2.5, 0.0076],
] as const;

/** A cable size of the table, mm². */
export type WireSize = (typeof OHMS_PER_METRE)[number][0];

/** Temperature coefficient of copper at 20 °C, per kelvin. Source: IEC 60028:1925, from memory. */
export const COPPER_PER_KELVIN = 0.00393;

/** Resistance of copper at a temperature over that at 20 °C: 1 + 0.00393 (T − 20 °C), about −40 to 150 °C. */
export function copperFactor(celsius: number): number {
  return 1 + COPPER_PER_KELVIN * (celsius - 20);
}

/** Resistance of a metre of cable at 20 °C, ohms. */
export function ohmsPerMetre(size: WireSize): number {
  const row = OHMS_PER_METRE.find(([mm2]) => mm2 === size);
  assert(row !== undefined, 'no such cable size', { size });
  return row[1];
}

/** A length of copper cable with the terminals at its ends, and whatever a fault has added in series. */
export class Wire extends Conductor {
  private readonly coldOhms: number;
  private temperature = 20;
  private added = 0;

  /** `terminalOhms` is both ends together; `spread` multiplies the copper (a cable's own tolerance). */
  constructor(
    a: number,
    b: number,
    metres: number,
    size: WireSize,
    private readonly terminalOhms = 0.008,
    spread = 1,
  ) {
    super(a, b);
    this.coldOhms = positive(metres, 'length') * ohmsPerMetre(size) * positive(spread, 'spread');
    notNegative(terminalOhms, 'terminal resistance');
    this.refresh();
  }

  /** Resistance end to end as it now stands, ohms. */
  get ohms(): number {
    return Math.min(
      this.coldOhms * copperFactor(this.temperature) + this.terminalOhms + this.added,
      OPEN_OHMS,
    );
  }

  get celsius(): number {
    return this.temperature;
  }

  set celsius(value: number) {
    this.temperature = finite(value, 'temperature');
    this.refresh();
  }

  /** Series resistance a fault adds, ohms; 0 is a sound wire, 1e9 a broken one. */
  get addedOhms(): number {
    return this.added;
  }

  set addedOhms(value: number) {
    this.added = Math.min(notNegative(value, 'added resistance'), OPEN_OHMS);
    this.refresh();
  }

  override get conducts(): boolean {
    return this.added < OPEN_OHMS;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.temperature, this.added);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.temperature = from.next();
    this.added = from.next();
    this.refresh();
  }

  private refresh(): void {
    this.siemens = 1 / this.ohms;
  }
}
