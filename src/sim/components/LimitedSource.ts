import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { positive } from './electricalLimits.ts';
import { adjacentMode, type PieceMode, readMode } from './pieceMode.ts';

/** What the output leaks when it is off, or when something outside holds it above its own voltage, siemens. */
const BLEED_SIEMENS = 1e-6;
/** Conductance left while limiting, siemens: the limit rises by 1 mA for each 10 V, so every network has one answer. */
const LIMITING_SIEMENS = 1e-4;

/**
 * A bench supply: holds voltage E behind a resistance R until it gives the limit I, then holds the current.
 *   v above E: the output only bleeds (it cannot take current back);  E − I R to E: i = (v − E) / R;
 *   below: i = −I.  i flows into `a`, so it is negative while current is delivered.
 * Switched off it is 1 MΩ. Piecewise linear, no output capacitor.
 */
export class LimitedSource extends Part {
  private piece: PieceMode = 0;
  private live = false;
  private across = 0;

  constructor(
    a: number,
    b: number,
    readonly setVolts: number,
    readonly ohms: number,
    readonly limitAmps: number,
  ) {
    super(a, b);
    positive(setVolts, 'voltage');
    positive(ohms, 'resistance');
    positive(limitAmps, 'limit');
  }

  get on(): boolean {
    return this.live;
  }

  set on(value: boolean) {
    if (value === this.live) return;
    this.live = value;
    this.piece = 0;
    this.touch();
  }

  /** Volts between its terminals. */
  get volts(): number {
    return this.across;
  }

  /** Amps given out at `a`. */
  get deliveredAmps(): number {
    return this.on ? -this.amps : 0;
  }

  get limiting(): boolean {
    return this.live && this.piece === -1;
  }

  override get injects(): boolean {
    return true;
  }

  override get piecewise(): boolean {
    return true;
  }

  override stamp(stamp: Stamp): void {
    stamp.conductance(this.a, this.b, this.siemens);
  }

  override inject(rhs: Float64Array): void {
    const amps = this.heldAmps;
    rhs[this.a] = (rhs[this.a] as number) + amps;
    rhs[this.b] = (rhs[this.b] as number) - amps;
  }

  override settle(x: Float64Array): boolean {
    if (!this.live) return false;
    // The middle of the regulating piece is the origin, so that both knees lie alike.
    const half = (this.limitAmps * this.ohms) / 2;
    const next = adjacentMode(this.piece, this.voltsAcross(x) - this.setVolts + half, half, true);
    if (next === this.piece) return false;
    this.piece = next;
    return true;
  }

  override accept(x: Float64Array, _h: number): void {
    this.across = this.voltsAcross(x);
    this.amps = this.across * this.siemens - this.heldAmps;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.piece, this.live ? 1 : 0, this.across);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.piece = readMode(from.next());
    const live = from.next() === 1;
    if (live !== this.live) this.touch();
    this.live = live;
    this.across = from.next();
  }

  override spice({ id, node }: SpiceNames): string[] {
    const [a, b] = [node(this.a), node(this.b)];
    if (!this.live) return [`R${id} ${a} ${b} ${1 / BLEED_SIEMENS}`];
    const v = `v(${a},${b})`;
    const knee = this.setVolts - this.limitAmps * this.ohms;
    const limited = `(${v}-${knee})*${LIMITING_SIEMENS}-${this.limitAmps}`;
    const regulated = `(${v}-${this.setVolts})/${this.ohms}`;
    const blocked = `(${v}-${this.setVolts})*${BLEED_SIEMENS}`;
    return [`B${id} ${a} ${b} I=${v}>${this.setVolts}?${blocked}:(${v}<${knee}?${limited}:${regulated})`];
  }

  /** Slope of the present piece. */
  private get siemens(): number {
    if (!this.live || this.piece === 1) return BLEED_SIEMENS;
    return this.piece === 0 ? 1 / this.ohms : LIMITING_SIEMENS;
  }

  /** Current the present piece gives out at 0 V. */
  private get heldAmps(): number {
    if (!this.live) return 0;
    const knee = this.setVolts - this.limitAmps * this.ohms;
    if (this.piece === -1) return this.limitAmps + knee * LIMITING_SIEMENS;
    return this.setVolts * this.siemens;
  }
}
