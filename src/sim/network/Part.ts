import type { Stamp } from './Stamp.ts';
import type { StateReader } from './StateReader.ts';

/** What a part needs of the circuit it sits in. */
export interface PartHost {
  touch(): void;
  /** The last accepted solution, by unknown. */
  readonly solution: Float64Array;
  /** Counts accepted solutions. */
  readonly accepted: number;
}

/** How a part's SPICE text refers to things. */
export interface SpiceNames {
  /** A text unique to the part, for element names and inner nodes. */
  readonly id: string;
  /** The SPICE name of a circuit node. */
  node(node: number): string;
}

/**
 * A part with two terminals of an electrical network.
 * Signs: a part's voltage is that of `a` over `b`; its current is positive when it flows into the part at `a`.
 * `h` is the length of the step in seconds, for a `StoringPart` the weight of a stage; infinity means "settled for ever"
 * (the operating point).
 */
export abstract class Part {
  private current = 0;
  /** Index of the part's own unknowns, set when the circuit is compiled. */
  branch = 0;
  protected host: PartHost | null = null;

  constructor(
    readonly a: number,
    public b: number,
  ) {}

  /** Current into terminal `a`, amps, as of the last accepted solution. */
  get amps(): number {
    return this.current;
  }

  set amps(value: number) {
    this.current = value;
  }

  /** How many unknowns beside node voltages the part adds (its own current, where that is solved for). */
  get branches(): number {
    return 0;
  }

  /** True when `inject` must be called for every solve. */
  get injects(): boolean {
    return false;
  }

  /** True when the part has modes that `settle` may change within a step. */
  get piecewise(): boolean {
    return false;
  }

  /** True when current can pass between the terminals as the part now stands. */
  get conducts(): boolean {
    return true;
  }

  attachTo(host: PartHost): void {
    this.host = host;
  }

  /** Says that a value in the matrix has changed. */
  protected touch(): void {
    this.host?.touch();
  }

  /** Adds the part's coefficients. Called only when something has changed; only a `StoringPart` may look at `h`. */
  abstract stamp(stamp: Stamp, h: number): void;

  /** Adds the part's sources to the right-hand side (by unknown; entry 0 is the reference and is ignored). */
  inject(_rhs: Float64Array, _h: number): void {}

  /** Checks the part's mode against a trial solution; changes it and says true when it does not fit. */
  settle(_x: Float64Array): boolean {
    return false;
  }

  /**
   * Takes a solution as fact: sets `amps` and moves the part's state by `h`. A part that works its current out when asked
   * and holds nothing needs none.
   */
  accept(_x: Float64Array, _h: number): void {}

  /** Appends everything that may change while running. A part with more than `amps` extends this and `load`. */
  save(out: number[]): void {
    out.push(this.amps);
  }

  load(from: StateReader): void {
    this.amps = from.next();
  }

  /** The part as lines of a SPICE netlist (Berkeley SPICE 3 syntax), in its present state. */
  abstract spice(names: SpiceNames): string[];

  /** SPICE name of the element whose current is `amps`, or null when SPICE does not report it. */
  spiceCurrent(_names: SpiceNames): string | null {
    return null;
  }

  protected voltsAcross(x: Float64Array): number {
    return (x[this.a] as number) - (x[this.b] as number);
  }
}
