import type { StateReader } from '../network/StateReader.ts';
import { Conductor } from './Conductor.ts';
import { OPEN_OHMS, positive } from './electricalLimits.ts';

/** A pair of contacts: a small resistance when closed, 1 GΩ when open. What an opening contact sparks over is a `Clamp` beside it. */
export class Contact extends Conductor {
  private shut: boolean;
  private closedResistance: number;

  constructor(a: number, b: number, closedOhms: number, closed = false) {
    super(a, b);
    this.closedResistance = positive(closedOhms, 'closed resistance');
    this.shut = closed;
    this.refresh();
  }

  get closed(): boolean {
    return this.shut;
  }

  set closed(value: boolean) {
    this.shut = value;
    this.refresh();
  }

  get closedOhms(): number {
    return this.closedResistance;
  }

  set closedOhms(value: number) {
    this.closedResistance = positive(value, 'closed resistance');
    this.refresh();
  }

  override get conducts(): boolean {
    return this.shut;
  }

  override save(out: number[]): void {
    super.save(out);
    out.push(this.shut ? 1 : 0, this.closedResistance);
  }

  override load(from: StateReader): void {
    super.load(from);
    this.shut = from.next() === 1;
    this.closedResistance = from.next();
    this.refresh();
  }

  private refresh(): void {
    this.siemens = 1 / (this.shut ? this.closedResistance : OPEN_OHMS);
  }
}
