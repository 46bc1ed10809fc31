import { Part, type SpiceNames } from '../network/Part.ts';
import type { Stamp } from '../network/Stamp.ts';
import type { StateReader } from '../network/StateReader.ts';
import { positive } from './electricalLimits.ts';
import { adjacentMode, type PieceMode, readMode } from './pieceMode.ts';

/** Conductance left while limiting, siemens: the limit rises by 1 mA for each 10 V, so every network has one answer. */
const LIMITING_SIEMENS = 1e-4;

/**
 * A driver's output path: a resistance R up to a current limit, which it then holds while the voltage across it rises.
 * Works alike in both directions. Piecewise linear; what it does about being in limit (latching off) is its owner's.
 */
export class CurrentLimiter extends Part {
  private mode: PieceMode = 0;

  constructor(
    a: number,
    b: number,
    private resistance: number,
    private limit: number,
  ) {
    super(a, b);
    positive(resistance, 'resistance');
    positive(limit, 'limit');
  }

  get ohms(): number {
    return this.resistance;
  }

  set ohms(value: number) {
    if (value === this.resistance) return;
    this.resistance = positive(value, 'resistance');
    this.touch();
  }

  get limitAmps(): number {
    return this.limit;
  }

  set limitAmps(value: number) {
    this.limit = positive(value, 'limit');
  }

  /** True when the last accepted solution lies in the limit. */
  get limiting(): boolean {
    return this.mode !== 0;
  }

  override get injects(): boolean {
    return true;
  }

  override get piecewise(): boolean {
    return true;
  }

  override stamp(stamp: Stamp): void {
    stamp.conductance(this.a, this.b, this.mode === 0 ? 1 / this.ohms : LIMITING_SIEMENS);
  }

  override inject(rhs: Float64Array): void {
    const amps = this.mode * this.heldAmps;
    rhs[this.a] = (rhs[this.a] as number) - amps;
    rhs[this.b] = (rhs[this.b] as number) + amps;
  }

  override settle(x: Float64Array): boolean {
    const next = adjacentMode(this.mode, this.voltsAcross(x), this.limitAmps * this.ohms, true);
    if (next === this.mode) return false;
    this.mode = next;
    return true;
  }

  override accept(x: Float64Array, _h: number): void {
    const v = this.voltsAcross(x);
    this.amps = this.mode === 0 ? v / this.ohms : v * LIMITING_SIEMENS + this.mode * this.heldAmps;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.mode);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.mode = readMode(from.next());
  }

  override spice({ id, node }: SpiceNames): string[] {
    const v = `v(${node(this.a)},${node(this.b)})`;
    const knee = this.limitAmps * this.ohms;
    const limited = (sign: string) => `${v}*${LIMITING_SIEMENS}${sign}${this.heldAmps}`;
    const current = `${v}>${knee}?${limited('+')}:(${v}<-${knee}?${limited('-')}:${v}/${this.ohms})`;
    return [`B${id} ${node(this.a)} ${node(this.b)} I=${current}`];
  }

  /** The part of the limit that does not depend on voltage, so that both pieces meet at the knee. */
  private get heldAmps(): number {
    return this.limitAmps - this.limitAmps * this.ohms * LIMITING_SIEMENS;
  }
}
